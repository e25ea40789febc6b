/** What of a season is folded away: how much comes of how many, and copies to take along. */
export const appSeasonFolds = {
  'app.season.yield': 'How much from how many',
  'app.season.yield.plants': 'Plants',
  'app.season.yield.plants.hint': 'Standing in the bed.',
  'app.season.yield.row': 'Or row, {unit, select, inch {feet} other {metres}}',
  'app.season.yield.row.hint': 'At {distance} from plant to plant.',
  'app.season.yield.is':
    '{plants} plants take {row} of row, on {area} of bed: {middle} of onions worth keeping in a middling year, {range} in 8 years of 10.',
  'app.season.yield.none': 'No crop worth keeping is likely from these.',

  'app.season.save': 'Copies to take along',
  'app.season.save.csv': 'Day-by-day table (CSV)',
  'app.season.save.print': 'Print for the shed',
  'app.season.save.done': 'Saved as {file}.',
  'app.season.save.failed': '{file} could not be made ({reason}).',
} as const;
