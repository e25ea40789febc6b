/** The When page. */
export const appWhen = {
  'app.when.now.always':
    '{place}: today, {date}, is in time for {crop}, as is nearly every week of the year.',
  'app.when.now.open': '{place}: today, {date}, is in time for {crop}, until {until}.',
  'app.when.now.late': '{place}: today, {date}, is too late for {crop}; next from {from}.',
  'app.when.now.early': '{place}: today, {date}, is too early for {crop}; start from {from}.',
  'app.when.now.never': '{place}: no week of the year can be counted on for {crop}.',
  'app.when.ways.always': 'In time in nearly every week of the year: {starts}.',
  'app.when.ways.open': 'Still good today: {starts}.',
  'app.when.ways.late': 'Too late for {starts}.',
  'app.when.ways.early': 'Too early for {starts}.',
  'app.when.ways.never': 'No week of the year can be counted on for {starts}.',
  'app.when.way.open': '{start} (until {date})',
  'app.when.way.early': '{start} (from {date})',
  'app.when.way.late': '{start} (next from {date})',
  'app.when.onion': 'Onion, as the packet says',
  'app.when.onion.packet': 'your packet',
  'app.when.onion.hint': 'Taken as {type} here.',
  'app.when.start': 'How you start it',
  'app.when.date.sown': 'Sowing day',
  'app.when.date.planted': 'Planting day',
  'app.when.date.hint': 'Gone by or still to come: the season from it stands below.',
  'app.when.date.bad': 'Give a day from {from} to {to}.',
  'app.when.which': 'Which: another onion, or your packet',
  'app.when.no-cultivar':
    '“{name}” is in no list we have. Taken instead: what the packet says, or what suits the place. {near, select, none {} other {Names like it:}}',
  'app.when.other-crop':
    '{name} grows from bulbs that split, and how it does can’t be told here. Taken instead: a bulb onion.',
  'app.when.year': 'Every week of the year tried',
  'app.when.year.lead':
    'Each week of the year as a day to start. The higher the hill, the more years end in good bulbs; the deeper the hollow, the more years something goes wrong.',
  'app.when.year.move':
    'Drag the onion, or move the slider, to another week: the season below changes with it.',
  'app.when.slider': 'Start',
  'app.when.slider.hindered': '{date}: {what}',
  'app.when.slider.value': '{date}: {what} {years}',
  'app.when.best': 'Back to the best, {date}',
  'app.when.edges': 'Started earlier, started later',
  'app.when.season': 'Season: from this start',
  'app.when.table.year': 'The year in numbers',
  'app.when.table.starts': 'All 52 starts in numbers',
  'app.when.table.onions': 'These onions in numbers',
} as const;
