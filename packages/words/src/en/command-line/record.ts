/** What was seen of a planting, put into its garden file. */
export const record = {
  'help.record':
    'Notes what was seen of a planting, or done to it, in your garden file, and shows all that the file holds of it.',
  'help.record.garden': 'your garden file (*.neckfall.json); it is changed',
  'help.record.planting': 'a planting of the garden file, by its id or its name',
  'help.record.date': 'the day it was seen, as YYYY-MM-DD or MM-DD, the last such day (default: today)',
  'help.record.leaves': 'green leaves standing on a plant; the mean where several were looked at',
  'help.record.neck': 'across the neck, in mm (--units us: inches)',
  'help.record.bulb': 'across the bulb where it is widest, in mm (--units us: inches)',
  'help.record.stand': 'plants that stand, in all',
  'help.record.flowering': 'plants with a flower stalk, in all',
  'help.record.tops-over': 'share of plants whose tops are over, from 0 to 1',
  'help.record.looked-at': 'plants that were looked at (default: one)',
  'help.record.watered': 'water given to the planting, in litres (--units us: gallons)',
  'help.record.fed': 'feed given: its numbers and grams, such as 10-4-8:200 (--units us: ounces)',
  'help.record.lifted': 'it was lifted',
  'help.record.weighed': 'weight of bulbs, in kg (--units us: pounds)',
  'help.record.count': 'bulbs that were weighed',
  'help.record.thick-necks': 'bulbs of those counted whose neck stayed thick',
  'help.record.sound': 'bulbs of the store that are sound',
  'help.record.sprouted': 'bulbs of the store that have sprouted',
  'help.record.rotten': 'bulbs of the store that have rotted',
  'help.record.note': 'anything else, in your own words',

  'record.held':
    '{name}: noted for {when}. {file} now holds {count, plural, one {# entry} other {# entries}} of it.',
  'record.column.date': 'Date',
  'record.column.lookedAt': 'Looked at',
  'record.column.leavesGreen': 'Leaves',
  'record.column.neckMm': 'Neck',
  'record.column.bulbMm': 'Bulb',
  'record.column.standCount': 'Standing',
  'record.column.floweringCount': 'In flower',
  'record.column.topsOverShare': 'Tops over',
  'record.column.wateredLitres': 'Water',
  'record.column.fed': 'Feed',
  'record.column.lifted': 'Lifted',
  'record.column.weighedKg': 'Weight',
  'record.column.bulbCount': 'Bulbs',
  'record.column.thickNeckCount': 'Thick necks',
  'record.column.soundCount': 'Sound',
  'record.column.sproutedCount': 'Sprouted',
  'record.column.rottenCount': 'Rotten',
  'record.column.note': 'Note',
  'record.yes': 'yes',
  'record.percent': '{percent}%',
  'record.fed': '{product}: {weight}',

  'error.no-garden': 'Which garden? Name your garden file (*.neckfall.json).',
  'error.garden-no-file':
    '{field} {value} is no file that can be changed. Name a garden file (*.neckfall.json).',
  'error.record-nothing': 'Nothing to note: give what was seen, such as --leaves 5 or --note "Weeded".',
  'error.fed-form':
    '--fed {value}: expected the numbers of the packet, a colon and the weight in {unit}, for example {example}.',
  'error.note-long':
    '--note: {length, number} characters are more than a note holds, {most, number}. Shorten it.',
  'error.garden-full':
    '{file} has {most, number} observations, the most that a garden has. Cut the file into several gardens.',
  'error.garden-not-one':
    '{file} is no garden file: its schema is "{found}", and neckfall/garden@1 was expected. Nothing was changed.',
  'error.garden-changed-meanwhile':
    '{file} is being changed by something else again and again. Nothing was noted; try again when that is done.',
} as const;
