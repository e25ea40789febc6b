/** Work on crops, told by the command line. */
export const jobsCommand = {
  'help.jobs':
    'The work on a crop: what to do this week and what comes, when, and why. A garden file alone gives all its plantings.',
  'help.jobs.planting': 'one planting of your garden file, by its id or its name',
  'help.jobs.from': 'tell work from this day on, as YYYY-MM-DD or MM-DD (default: all)',
  'help.jobs.to': 'tell work up to this day',
  'help.jobs.ics':
    'also write the work to this file as a calendar (*.ics); written again, it renews what the calendar has',
  'help.jobs.done': 'note in the garden file that a job is done, such as weed or feed-2',
  'help.jobs.leave-out': 'note that a job is left out',
  'help.jobs.put-off': 'note that a job is put off to a day, such as weed:05-20',

  'jobs.week': '{place}, this week, {range}:',
  'jobs.from': '{place}, from {date} on:',
  'jobs.between': '{place}, {range}:',
  'jobs.none': 'Nothing to do in those days.',
  'jobs.unsourced': 'Without a source, from common practice or memory: {jobs}.',
  'jobs.week.none': 'Nothing to do this week.',
  'jobs.week.over': 'Nothing more to do.',
  'jobs.coming': 'What comes:',
  'jobs.past': 'Done or gone by:',
  'jobs.of': '{name}: {what}',
  'jobs.left-out': 'Plantings left out:',
  'jobs.left-out.one': '{name}: {why}',
  'jobs.why.open': 'its onion, its start or its day is not said yet.',
  'jobs.why.over': 'its work is over.',
  'jobs.cautions': 'Take care:',

  'error.jobs-none':
    '{value}: {count, plural, =0 {this garden has no planting} other {no planting has work to come ({names})}}. Add one in the app, or name a place and a plan.',
  'error.to-before-from': '--to {value} lies before {from}. Expected the same day or a later one.',
  'error.one-at-a-time': '{field} and {other} were both given: say one thing at a time.',
  'error.put-off-form': '--put-off {value}: expected a job, a colon and the day, for example weed:05-20.',
  'error.job-unknown':
    '{field} {value}: {name} has no such job.{near, plural, =0 {} other { Did you mean {nearest}?}} It has {expected}.',
  'error.garden-full-jobs':
    '{file} has {most, number} notes on work, the most that a garden has. Cut the file into several gardens.',
  'error.ics-no-file': '--ics {value} is no file that can be written. Name a file (*.ics).',
  'error.ics-other':
    '--ics {value} holds something else than work written by neckfall, which would be lost. Name another file, and let your calendar read it in.',
} as const;
