/** Plantings of a garden file in place of a place and a plan. */
export const planting = {
  'help.planting':
    'a planting of your garden file, by its id or its name; the file (*.neckfall.json) then stands in place of the town, and what was seen counts',
  'clash.planting-says-all': 'the planting and its place say that already.',
  'as-usual.phyllochron': 'How fast your leaves come: as usual for the kind, as far as was seen.',
  'as-usual.ripening': 'How fast your bulbs ripen: as usual for the kind, as far as was seen.',
  'as-usual.criticalH':
    'The day length at which your bulbs start: as usual for the kind, as far as was seen.',
  'as-usual.growth': 'How much your plants grow: as usual for the kind, as far as was seen.',
  'error.planting-no-garden':
    '--planting {value}: in which garden? Name your garden file in place of a town: neckfall season my.neckfall.json --planting {value}',
  'error.garden-no-planting':
    '{value} is a garden file: say which of its plantings with --planting, by id or name.',
  'error.planting-unknown':
    '--planting {value}: no planting of {file} has this id or name.{near, plural, =0 {} other { Nearest: {nearest}.}} {count, plural, =0 {The file has none.} other {It has {expected}.}}',
  'error.planting-ambiguous':
    '--planting {value}: {count, number} plantings of {file} are called so. Name one by its id: {expected}.',
  'error.planting-placeless':
    '--planting {value}: {file} has no place for this planting. Give it the id of one of the file’s places (placeId).',
  'error.planting-open':
    '--planting {value}: {file} does not say its {missing, select, start {way of starting (start)} startDate {day of the start (startDate)} other {onion (cultivar, class or packetHours)}}. Add it in the app, or in the file.',
} as const;
