/** The map page. */
export const appAtlas = {
  'app.atlas.coming': '{region}: the map of onions is being worked out…',
  'app.atlas.of': '{region}{among}: {points, plural, one {one point} other {# points}}, one every {step}°.',
  'app.atlas.among':
    '{kind, select, any {} other {, {kind} onions alone}}{way, select, any {} other {, {way} alone}}',
  'app.atlas.no-points': 'No point of this map lies on land with climate records.',
  'app.atlas.shows': 'What the map shows',
  'app.atlas.shows.kind': 'Kind that does best',
  'app.atlas.shows.good': 'Good years in ten',
  'app.atlas.shows.start': 'Best start',
  'app.atlas.shows.tops': 'Tops over',
  'app.atlas.shows.size': 'Bulb size',
  'app.atlas.view': 'Where',
  'app.atlas.view.here': 'About your place',
  'app.atlas.view.all': 'All land',
  'app.atlas.view.europe': 'Europe',
  'app.atlas.view.africa': 'Africa',
  'app.atlas.view.west-asia': 'Western and southern Asia',
  'app.atlas.view.east-asia': 'Eastern Asia',
  'app.atlas.view.north-asia': 'Northern Asia',
  'app.atlas.view.north-america': 'North America',
  'app.atlas.view.middle-america': 'Mexico, Central America and the Caribbean',
  'app.atlas.view.south-america': 'South America',
  'app.atlas.view.australia': 'Australia and New Guinea',
  'app.atlas.view.pacific': 'Islands of the Pacific',
  'app.atlas.view.new-zealand': 'New Zealand',
  'app.atlas.kind': 'Which onions',
  'app.atlas.kind.any': 'whichever do best',
  'app.atlas.way': 'How they are started',
  'app.atlas.way.any': 'whichever way does best',
  'app.atlas.label':
    'Map of {region}. Arrow keys move a cross over it; what onions do there is told beside it.',
  'app.atlas.line':
    '{type}, {start}: good bulbs {years}. Best start {startDay}, tops over {tops}, bulbs {size}.',
  'app.atlas.line.none': 'Rest the pointer on the map to read it point by point.',
  'app.atlas.line.unknown': 'No point is worked out here.',
  'app.atlas.line.bare': 'Good bulbs come here in hardly any year.',
  'app.atlas.working':
    'A point every {step}°: {left, plural, one {one place} other {# places}} left to look at, land and sea.',
  'app.atlas.whole':
    'Points every {step}° are there{done, select, yes {, which is all. They are kept on this device} other {}}.',
  'app.atlas.stop': 'Stop here',
  'app.atlas.go-on': 'Go on, finer',
  'app.atlas.failed': 'The map can’t go on ({reason}). What is drawn stands.',
  'app.atlas.point': 'A point of the map',
  'app.atlas.point.how':
    'Tap the map, move the cross with the arrow keys, or name a town: its answer is the one that Where gives, from all its years.',
  'app.atlas.asking': '{latitude}, {longitude}: working it out…',
  'app.atlas.point.beyond-latitudes': '{latitude}, {longitude}: beyond the land covered.',
  'app.atlas.point.at-sea': '{latitude}, {longitude}: this point lies in water.',
  'app.atlas.point.beyond-nodes': '{latitude}, {longitude}: too far from climate records.',
  'app.atlas.point.good': 'Good bulbs',
  'app.atlas.point.start': 'Start',
  'app.atlas.point.tops': 'Tops over',
  'app.atlas.point.size': 'Bulbs across',
  'app.atlas.point.where': 'Where: all about this point',
  'app.atlas.table': '{region}{among}: by bands of latitude',
  'app.atlas.table.note':
    'Shares of ground are by area. Months and sizes are those of ground where good bulbs come at all.',
  'app.atlas.save.svg': 'Keep the map as SVG',
  'app.atlas.save.png': 'Keep the map as PNG',
  'app.atlas.save.csv': 'Keep its points as CSV',
  'app.caution.map':
    'A map shows what is usual over wide ground. Hills, coasts and cities differ within one field of it: ask for the place itself before you buy.',
  'app.atlas.how.points':
    'Points lie on whole multiples of latitude and longitude, down to every {step}°. Each stands for the field about it, and is worked out for the height of the nearest town or record.',
  'app.atlas.how.years':
    'The map tries only {years} made-up years at each point, and starts two weeks apart, from {from} on, so that it stays true for the year. Where tries more years and begins today.',
  'app.atlas.how.less':
    'So the map and the answer beside it may differ by a year in ten and by some days: the answer beside it is the better one.',
  'app.atlas.how.ground':
    'Ground farther than {distance} from a climate record is left empty. All climates are taken {warmer} warmer than their record, as the land is now.',
  'app.atlas.how.drawn':
    'Equal areas on the ground are equal on the map (all land: Equal Earth; parts: Lambert’s azimuthal projection). No borders are drawn.',
} as const;
