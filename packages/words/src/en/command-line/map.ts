/** Maps by the command line. */
export const mapCommand = {
  'help.atlas':
    'A map of onions: which kind does best at the points of a region, when it is started, how it comes out.',
  'help.map-join': 'join, to make one map of the parts of several runs',
  'help.map-parts': 'the parts to be joined',
  'help.map-region':
    'world, a part of it (europe, africa, south-america …), a country, or the edges SOUTH,WEST,NORTH,EAST in degrees (world)',
  'help.map-step': 'from point to point, degrees (1)',
  'help.map-class': 'only onions of this kind: short, intermediate or long',
  'help.map-start': 'only started this way: direct-seed, raised-seedlings, bought-transplants or sets',
  'help.map-every': 'every kind started every way at each point, not what does best alone',
  'help.map-shard':
    'work out one part of several, such as 2/8; --out names the part, and `neckfall atlas join` makes the map of all',
  'help.map-shows':
    'what a picture of it shows: the kind that does best, good years in ten, best start, tops over, bulb size (kind)',
  'help.map-years': 'weather years tried at each point, 1 to 200 (10)',
  'mapping.progress':
    '{share}% done, {rate} points a second, {minutes, plural, =0 {about {seconds, plural, one {# second} other {# seconds}} left} other {about {minutes, plural, one {# minute} other {# minutes}} left}}',
  'mapping.goes-on':
    'Going on from an earlier run: {done, number} of {tiles, number} {tiles, plural, one {piece} other {pieces}} of the map are there.',
  'mapping.stopped': 'What was worked out is kept in {file}: the same command goes on from there.',
  'mapping.shard-done':
    'Part {number} of {of} is whole: {tiles, plural, one {# piece} other {# pieces}} in {file}. With all parts there, `neckfall atlas join` makes the map.',
  'mapping.no-land':
    'No covered land at the points of this region, which stand {step}° apart: take a smaller --step, or a larger region.',
  'mapping.table': 'By bands of latitude',
  'mapping.points':
    'Points stand at whole multiples of {step}° of latitude and longitude, on land; their height is that of the nearest town or climate point.',
  'mapping.years':
    'Each is tried in {years, plural, one {# made-up year} other {# made-up years}} of weather (series {seed}), started on a day of every other week of the year; `neckfall season --at` with --years {years} has the same figures for a point, a kind and a start.',
  'mapping.sure':
    'That a start is the best of the 26 is a rule of thumb: in 97 of 100 kinds and ways tried it was the very one. Least sure: the day length at which a kind starts its bulbs, known to about half an hour.',
  'error.map-word':
    'Unexpected "{value}": a map is of a --region, for example neckfall atlas --region europe. To make one of parts: neckfall atlas join PART…',
  'error.map-region':
    '--region {value}: expected world, a part of it, a country by name or code, or the edges SOUTH,WEST,NORTH,EAST in degrees.{near, plural, =0 {} other { Did you mean {nearest}?}}',
  'error.map-box':
    '--region {value}: expected the edges SOUTH,WEST,NORTH,EAST in degrees, south below north, for example --region 35,-10,60,30 (with decimal commas: "35;-10;60,5;30"). East may lie west of west: then it crosses the date line.',
  'error.map-shard':
    '--shard {value}: expected a part and how many there are, such as 2/8 for the second of eight.',
  'error.map-shard-out': '--shard {value} writes a part of a map: name its file with --out.',
  'error.map-shard-form':
    '{field} does not go with --shard: a part is no map yet. `neckfall atlas join` gives the map of all parts in any form.',
  'error.map-ending': '--out {value}: expected a file that ends in {expected}; or say --json or --csv.',
  'error.map-part-other':
    '{value} is a part of another map, with other settings. Name another --out, or remove that file if you no longer need it.',
  'error.map-part-none': '{value} is no part of a map, and is left as it is. Name another file.',
  'error.map-part-missing': '{value} could not be read ({reason}). Expected a part written with --shard.',
  'error.map-part-engine':
    '{value} was made by version {engine}, this is {own}: their figures may differ. Make all parts with one version.',
  'error.map-part-changed': '{value} was changed while it was read. Run the command again.',
  'error.map-parts-differ':
    '{value} is of another map than {first}: parts join when they were made with the same settings.',
  'error.map-parts-missing':
    '{missing, plural, one {One of {tiles, number} pieces is} other {# of {tiles, number} pieces are}} in none of these parts, the first of them piece {first, number}. Run the shards that are missing or were stopped again, then join.',
  'error.map-no-parts':
    'Which parts? Name the files written with --shard: neckfall atlas join PART… --out map.geojson',
  'clash.parts-say-all': 'the parts say what they are of.',
} as const;
