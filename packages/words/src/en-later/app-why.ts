/** The Why page: what was seen, what may be behind it, one question at a time, and next year. */
export const appWhy = {
  'app.why.title': 'What went wrong?',
  'app.why.lead': 'Press what you saw, then see why. One thing is enough.',
  'app.why.search': 'Find it in your own words',
  'app.why.search.hint': 'never bulbed, mouldy necks …',
  'app.why.search.found':
    '{count, plural, =0 {Nothing here goes by “{query}”. Look through all that may be seen.} one {One thing may be meant.} other {# things may be meant, the likeliest first.}}',
  'app.why.search.like': 'What “{query}” may mean',
  'app.why.time.growing': 'While it grew',
  'app.why.time.lifting': 'At harvest',
  'app.why.time.store': 'In store',
  'app.why.most': 'More than {most} things cannot be weighed at once. Take one back first.',
  'app.why.chosen': '{count, plural, =0 {Nothing pressed yet} one {One thing} other {# things}}',
  'app.why.see': 'See why',
  'app.why.saw': 'What you saw',
  'app.why.saw.change': 'Change what you saw',

  'app.why.crop.chosen':
    'You had not said how you grew it, so this is what most would have grown here. The nearer it comes to yours, the truer the answer.',
  'app.why.crop.which': 'Which crop',
  'app.why.crop.free': 'one that is not kept here',
  'app.why.crop.learns': 'What you noted of it, and the weather kept here, go into the answer.',
  'app.why.about': 'The days are about right, not sure',
  'app.why.noticed': 'When you saw it in store',
  'app.why.noticed.unsaid': 'not sure',

  'app.why.rescue': 'What can still be done',
  'app.why.causes': 'What may be behind it',
  'app.why.for': 'What speaks for it',
  'app.why.against': 'What speaks against it',
  'app.why.look': 'To be sure',
  'app.why.advice': 'Next time',
  'app.why.what-if': 'With it and without it',
  'app.why.with': 'with it',
  'app.why.without': 'without it',
  'app.why.more': 'Why it may be this',
  'app.why.more-of': 'Why it may be this: {cause}',
  'app.why.picture': 'Cut through, to one scale: with it {with}; without it {without}.',
  'app.why.picture.store': 'Of ten bulbs, still sound: with it {with}, without it {without}.',
  'app.why.picture.sound': '{count} of 10 still sound',

  'app.why.ask': 'One question that would tell more',
  'app.why.ask.start': 'How did you start them?',
  'app.why.ask.class': 'What did the packet or bag say?',
  'app.why.ask.left':
    '{left, plural, =0 {This is the last question.} one {After this at most one more.} other {After this at most # more.}}',
  'app.why.ask.done': 'There is nothing more to ask that would change much.',
  'app.why.answered': 'What you answered',
  'app.why.answered.is': '{question} {answer}.',
  'app.why.take-back': 'Take back',
  'app.why.take-back-of': 'Take back: {question}',
  'app.why.anew': 'Weighed again: {answer}',

  'app.why.next': 'Next year',
  'app.why.next.plan': 'Next year’s plan: {onion}, {start}, {date}',
  'app.why.next.keep': 'Keep next year’s plan {holder, select, page {on this page} other {on this device}}',
  'app.why.next.kept': 'Kept as “{name}”.',
  'app.why.next.name': '{onion}, {start}, {year}',
  'app.why.next.which': 'Which onions there are',
  'app.why.next.when': 'The year week by week',

  'app.why.how.runs':
    'The season was grown again in {years} years of weather, as you told it and with each cause put in or taken away.',
  'app.why.how.listed':
    'What no run can know, such as pests, feeding and rough handling, is weighed by how common it is and what it looks like. Those figures are from memory, not from counts.',
  'app.why.how.unsaid': 'What you did not say of the bed may have been otherwise, and is weighed so.',
  'app.why.how.noticed': 'When it was seen in store was not said: four months after harvest was taken.',
  'app.why.how.store': 'Where they were kept was not said: {store} was taken.',

  'app.why.link': 'Something went wrong with it? Find out why',
  'app.why.link.outcome': 'If you saw this: why, and what would help',
  'app.why.link.store': 'Why they went bad',
} as const;
