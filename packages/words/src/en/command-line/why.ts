/** The command that tells why a crop failed. */
export const whyCommand = {
  'help.why':
    'Why a crop came to what was seen of it: what can be saved, the likely causes with what speaks for and against each, the same season without them, what to look at next and what to do next year. Of a place and a plan, or of a planting of a garden file.',
  'help.why.date':
    'when it was sown or planted: YYYY-MM-DD, or MM-DD for the last season that came so far; left out: what is usual there',
  'help.why.year': 'the year in which it was started, where --date is MM-DD or left out',
  'help.why.seen':
    'what was seen, up to {most} with commas between: names of --list or words of your own, such as flowered, small or "rotted in store"',
  'help.why.list': 'lists what may be seen, each with what tells it from what looks like it',
  'help.why.noticed': 'when it was seen: YYYY-MM-DD, YYYY-MM or MM',
  'help.why.said':
    'an answer to a question that was asked, such as watering=often; {pass} where you can’t say; may be given again',
  'help.why.about': 'the dates are as remembered, up to a fortnight off',
  'help.why.store':
    'where they were kept: {places}, or its air the year round as °C and % humidity, such as 8,70; left out: {usual}, and other places are weighed too',

  'why-told.rescue': 'What can be saved:',
  'why-told.causes': 'What may be behind it:',
  'why-told.against': 'Against it: {sentence}',
  'why-told.look': 'To be sure: {sentence}',
  'why-told.others': 'Less likely: {causes}.',
  'why-told.other': '{cause} ({chance})',
  'why-told.ask': 'What would tell most:',
  'why-told.answer-with': 'Ask again with the answer that fits:',
  'why-told.next-year': 'What to do otherwise:',
  'why-told.next-start': '{type} onions, {start}, about {date}.',
  'why-told.list': 'What may be seen, with what tells it from what looks like it:',

  'why-assumed.onion':
    'Which onion was not said: {class} ones were taken, which suit the place best so started.',
  'why-assumed.start': 'How it was started was not said: taken as {start}, which is usual there.',
  'why-assumed.date': 'The day was not said: it is taken as started on {date}, which is usual there.',
  'why-assumed.season': 'The season meant is taken to be the last that came so far, started on {date}.',
  'why-assumed.store':
    'Where they were kept was not said: {store}, as is usual, with what other places would have done.',
  'why-assumed.noticed': 'When it was seen in store was not said: four months after they were brought in.',
  'why-assumed.unsaid': 'What was not said of the bed may have been otherwise, and is weighed so.',

  'error.why-seen':
    '--seen is missing: say what was seen, for example --seen flowered. `neckfall why --list` lists what may be seen.',
  'error.why-seen-unknown':
    '--seen {value}: nothing is called so.{near, plural, =0 {} other { Nearest: {nearest}.}} `neckfall why --list` lists what may be seen.',
  'error.why-seen-many':
    '--seen names {count, number} things: {most, number} at most. Leave out what matters least.',
  'error.why-said-form': '--said {value}: expected a question and its answer, such as {example}.',
  'error.why-noticed-form':
    '--noticed {value}: expected a month or a day on which it was seen: YYYY-MM-DD, YYYY-MM or MM, such as 01.',
  'error.why-noticed-ahead': '--noticed {value} is still to come: expected a day up to {today}.',
  'error.why-noticed-before': '--noticed {value} is before the crop was started on {start}.',
  'error.why-not-started':
    '{field} {value}: the crop is started on {start}, which is still to come, and nothing can have been seen of it. Expected a day up to {today}.',
  'error.why-long-ago': '{field} {value}: expected a season from {from} on, or one that --weather covers.',
  'error.why-year': '--year {value}: expected a year from {from} to {to}.',
  'clash.date-says-year': 'the date says its year.',
  'clash.said-twice': 'both say the same of the crop.',
} as const;
