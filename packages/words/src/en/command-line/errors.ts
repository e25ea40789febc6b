/** Refusals: each names the value, what was expected and what to do. One line each. */
export const errors = {
  'error.unknown-option':
    'Unknown option {value}.{near, plural, =0 {} other { Did you mean {nearest}?}} `neckfall {command} --help` lists the options.',
  'error.unknown-command':
    'Unknown command "{value}".{near, plural, =0 {} other { Did you mean {nearest}?}} Commands: {expected}.',
  'error.missing-value': '{field} needs a value: {field} {expected}.',
  'error.missing-command': 'Say which command you want: {expected}. For example: {example}',
  'error.extra-argument':
    'Unexpected "{value}". A name of more than one word needs quotes, for example {command} "{example}".',
  'error.missing-option': '{field} is missing: give {expected}.',
  'error.no-place': 'Which place? Name a town, or give a point as --at LAT,LON.',
  'error.two-places': 'Both a town ("{value}") and --at {at} were given; leave one out.',
  'error.town-unknown':
    'No town "{value}" in the list of places of 1,000 people or more.{near, plural, =0 {} other { Nearest: {nearest}.}} For a smaller place give --at LAT,LON.',
  'error.postcode':
    '"{value}" looks like a postal code, and those are not known here. Name the town instead, or give its point as --at LAT,LON.',
  'error.town-not-in-area':
    'No town "{town}" in "{area}".{near, plural, =0 {} other { Nearest: {nearest}.}} For a smaller place give --at LAT,LON.',
  'error.area-unknown':
    'No country or state "{area}" is known, in "{value}".{near, plural, =0 {} other { Did you mean {nearest}?}}',
  'error.at-form':
    '--at {value}: expected LAT,LON or LAT,LON,ELEV in degrees and metres, for example --at 45.76,4.84,175 (with decimal commas: --at "45,76;4,84").',
  'error.latitude-range': '--at {value}: the latitude {latitude} is outside −90 to 90. Latitude comes first.',
  'error.longitude-range': '--at {value}: the longitude {longitude} is outside −180 to 180.',
  'error.elevation-range':
    '--at {value}: the elevation {elevation} m is outside −430 to 6,000 m, where crops could be grown.',
  'error.at-sea':
    '--at {value} is at sea; the nearest town is {nearest}, {distance} away. Latitude comes first, then longitude; south and west are negative.',
  'error.beyond-latitudes':
    '{value} is beyond the covered land, which reaches from 60° S to 72° N: there is no climate to plan with.',
  'error.beyond-nodes':
    '{value} is beyond the covered land: the nearest climate point is {distance} away, and {limit} is the limit. Choose a place nearer to a town with records.',
  'error.date-form': '{field} {value}: expected a date as MM-DD or YYYY-MM-DD, for example {example}.',
  'error.full-date-form': '{field} {value}: expected a full date as YYYY-MM-DD, for example {example}.',
  'error.date-not-in-calendar':
    '{field} {value}: there is no such day. Expected a day of the calendar, for example {example}.',
  'error.date-limits':
    '{field} {value} is beyond the limits: expected a date from {from} to {to}, or in a year that --weather covers.',
  'error.today-limits': '--today {value} is beyond the limits: expected a date in the years 1950 to 2090.',
  'error.number':
    '{field} {value}: expected a number from {min, number} to {max, number}{unit, select, none {} other { {unit}}}.',
  'error.whole-number':
    '{field} {value}: expected a whole number from {min, number} to {max, number}{unit, select, none {} other { {unit}}}.',
  'error.choice':
    '{field} {value}: expected {expected}.{near, plural, =0 {} other { Did you mean {nearest}?}}',
  'error.contradiction': '{field} does not go with {other}: {why} Leave one of them out.',
  'error.json-and-csv':
    '--json does not go with --csv: one document or one table, not both. Leave one of them out.',
  'error.plant-out-before-start':
    '--plant-out {value} is not after the sowing on {start}: seedlings are planted out after they are sown.',
  'error.plant-out-too-late':
    '--plant-out {value} is more than {limit} days after the sowing on {start}; expected a date up to {latest}.',
  'error.no-table': '{field}: this answer is no table. Use --json, or --csv with {expected}.',
  'error.out-folder': '{field} {value}: the folder {folder} does not exist. Make it first, or name another.',
  'error.out-is-folder': '{field} {value} is a folder: expected the name of a file to write.',
  'error.out-is-input':
    '{option} {value} is the file that {field} reads, and would be lost. Name another file.',
  'error.out-no-reader':
    '--out {value} is a pipe that nobody has read for {seconds, number} seconds. Start what reads it first, or name a file.',
  'error.out-read-only':
    '{field} {value}: this place may not be written to ({reason}). Name a file in a folder of your own.',
  'error.out-full':
    '{field} {value}: the disk is full. Nothing was written; make room or name another place.',
  'error.out-failed': '{field} {value} could not be written ({reason}). Nothing was written.',
  'error.stdout-full': 'The answer could not be printed: the disk behind the output is full ({reason}).',
  'error.stdout-failed': 'The answer could not be printed ({reason}).',
  'error.weather-missing':
    '{value}: there is no such file. Expected a file of weather, such as a CSV file with the columns date, temp_min_c and temp_max_c.',
  'error.weather-unreadable': '{value} could not be read ({reason}). Expected a file that you may read.',
  'error.weather-too-big':
    '{value} is larger than {limit, number} MB, unpacked or not, and no record is. Give a part of it.',
  'error.garden-too-big':
    '{field} {value} is larger than {limit, number} MB, the most that a garden file may be. Expected a garden file (*.neckfall.json).',
  'error.garden-too-many':
    '{field} {value}: {list} has {count, number} entries; a garden has at most {most, number}. Cut the file into several gardens.',
  'error.weather-refused':
    '{value}{line, select, none {} other {, line {line}}}{column, select, none {} other {, {column}}}: "{received}", expected {expected}.{more, plural, =0 {} one { One more issue in the file.} other { # more issues in the file.}} Mend the file and try again.',
  'error.data-missing':
    'The data file {value} is missing or damaged ({reason}). Run `npm run build` again, or make a fresh checkout.',
  'error.internal':
    'Something went wrong inside Neckfall ({reason}). Please report it with the command you gave; --debug shows more.',
  'clash.plant-out-only-here': 'only seedlings from trays are planted out.',
  'clash.lamp-hours-only-here': 'only seedlings in trays stand under lamps.',
  'clash.nursery-temp-only-here': 'only seedlings in trays have a nursery.',
  'clash.set-size-only-here': 'only sets have a size.',
  'clash.set-store-only-here': 'only sets come out of a store.',
} as const;
