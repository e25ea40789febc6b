/** The page that walks through the latitudes. */
export const appLatitudes = {
  'app.latitudes.latitude': 'How far from the equator',
  'app.latitudes.side': 'Side of the equator',
  'app.latitudes.north': 'north of it',
  'app.latitudes.south': 'south of it',
  'app.latitudes.stops': 'Stops on the way',
  'app.latitudes.stop.equator': 'equator',
  'app.latitudes.stop.tropic': 'tropic, {degrees}°',
  'app.latitudes.stop.circle': 'polar circle, {degrees}°',
  'app.latitudes.stop.degrees': '{degrees}°',
  'app.latitudes.warmth': 'Warmth',
  'app.latitudes.warmth.value': '{warmth}: the year’s mean is {mean}, its coldest night {night}',
  'app.latitudes.usual': 'As usual here',
  'app.latitudes.sown': 'Sowing day',
  'app.latitudes.earlier': 'Three weeks earlier',
  'app.latitudes.later': 'Three weeks later',
  'app.latitudes.kind': 'Onion to follow',
  'app.latitudes.keys':
    'Arrow keys move a slider by a step, Page Up and Page Down by more, Home and End to its ends.',
  'app.latitudes.misread':
    'The link says {value}, which is no {what, select, latitude {latitude from −70 to 70 in whole degrees} warmth {warmth from −8 to 8 °C} other {kind of onion}}: the page shows the usual one.',
  'app.latitudes.year': 'The days of the year, and what each kind asks of them',
  'app.latitudes.bulbs': 'All five kinds, sown that day',
  'app.latitudes.bulbs.table': 'The five kinds cut through, in numbers',
  'app.latitudes.line': 'What does best on the way, each kind sown on its own best day',
  'app.latitudes.line.working': 'The line is being worked out: {known} of {all} degrees so far.',
  'app.latitudes.zone': 'Why one hardiness zone holds opposite kinds',
  'app.latitudes.zone.go': 'Stand at {place}',
  'app.latitudes.zone.table': 'The coldest night held at {night} while the latitude moves',
  'app.latitudes.zone.warmth': 'Against the usual there',
  'app.latitudes.zone.longest': 'Longest day',
  'app.latitudes.zone.none': 'No two latitudes with one coldest night had opposite kinds here.',
  'app.latitudes.zone.bulbs': 'At {place}, all sown on {date}',
  'app.latitudes.how.place':
    'These places are made up: no town is meant, and none is this even. The sun is that of the latitude, to the minute. The climate is the mean of our climate points below {height} of height within 5° of the latitude, on both sides of the equator (months of the south turned by half a year), with the warming since those records and the warmth you set.',
  'app.latitudes.how.sown':
    'Every onion is sown in place in an open bed of loam, watered, at {density}. The five kinds are those of packets; what each asks of the day is fitted to field records, and moves a little with the latitude, since kinds are bred where they are sold.',
  'app.latitudes.how.line':
    'Which kind does best is judged as on the page Where: good bulbs in most years first, then size, keeping, flower stalks, time in the bed, and whether shops there have it.',
  'app.latitudes.take.way': 'from the equator to {place}, {warmth}, places made up',
  'app.latitudes.take.where': '{place}, {warmth}, a place made up',
  'app.latitudes.real': 'For a real place, ask Where',

  'latitude.at': '{side, select, north {{degrees}° north} south {{degrees}° south} other {the equator}}',
  'latitude.needs': '{type} {hours}',
  'latitude.headline.good':
    'At {place}, sown in place on {date}, {type} onions do best: {what}, {across} across.',
  'latitude.headline.none':
    'At {place}, sown in place on {date}, no kind of onion makes good bulbs in most years; {type} onions come nearest, with this: {what}.',
  'latitude.day': 'At {place} the longest day is {longest} with the sun up and the shortest {shortest}.',
  'latitude.day.alike': 'At {place} the sun is up about {longest} every day of the year.',
  'latitude.day.no-night':
    'At {place} the sun does not set for {up, plural, one {# day} other {# days}} of summer, and the shortest day is {shortest}.',
  'latitude.day.polar':
    'At {place} the sun does not set for {up, plural, one {# day} other {# days}} of summer, and does not rise for {down, plural, one {# day} other {# days}} of winter.',
  'latitude.kind': '{lead}; sown on {date}, {end}.',
  'latitude.kind.span':
    'The bulbs of {type} onions start when the sun is up {hours}, here from {from} to {to}',
  'latitude.kind.always':
    'The bulbs of {type} onions start when the sun is up {hours}, and every day here is that long',
  'latitude.kind.never':
    'The bulbs of {type} onions start when the sun is up {hours}, and no day here is that long',
  'latitude.end.good':
    'they have {leaves, plural, one {# leaf} other {# leaves}} when bulbs start on {date}, and the tops go over on {tops}',
  'latitude.end.small':
    'they have {leaves, plural, one {# leaf} other {# leaves}} when bulbs start on {date}, too few for more than a small bulb, and the tops go over on {tops}',
  'latitude.end.not-ripe':
    'they have {leaves, plural, one {# leaf} other {# leaves}} when bulbs start on {date}, and are still thick-necked when the season ends',
  'latitude.end.no-bulb': 'they grow leaves and no bulb',
  'latitude.end.bolts': 'they stand a winter too big and run to flower',
  'latitude.end.winter-killed': 'they are lost to winter',
  'latitude.next.rings':
    'Sow three weeks earlier, on {date}, and each bulb {change, select, more {has {rings, plural, one {one more ring} other {# more rings}}} fewer {has {rings, plural, one {one ring less} other {# rings fewer}}} other {has as many rings}}{size, select, wider { and is {by} wider} narrower { and is {by} narrower} other {, and is no wider}}.',
  'latitude.next.same': 'Sow three weeks earlier, on {date}, and nothing is won: the bulbs are the same.',
  'latitude.next.cold':
    'Sow three weeks earlier, on {date}, and nothing is won: the seed waits in cold ground and comes up with the later sown.',
  'latitude.next.then': 'Sow three weeks earlier, on {date}, and it comes to this: {what}.',
  'latitude.next.other':
    'No earlier sowing mends that, it is the wrong kind for these days: {type} onions sown the same day come to {what}, {across} across.',
  'latitude.next.nothing':
    'Sown three weeks earlier, on {date}, they make no bulb either, and no other kind does well from that day: move the sowing day or the warmth.',
  'latitude.days.always': 'all year',
  'latitude.days.never': 'never',
  'latitude.days.span': '{from} to {to}',
  'latitude.warmth.usual': 'as warm as usual',
  'latitude.warmth.warmer': '{by} warmer than usual',
  'latitude.warmth.colder': '{by} colder than usual',
  'latitude.zone.same':
    'Take two places where the coldest night of a usual winter is {night}, {one} and {other}: they lie in one hardiness zone.',
  'latitude.zone.place':
    'At {place} the longest day is {longest}: {type} onions sown on {date} grow {across} across. There {stranger} onions sown the same day come to this: {what}.',
  'latitude.zone.words':
    'The zone tells of winter cold; the onion asks the day. The one place belongs to {one} kinds and the other to {other} kinds, though both have the same number on a map of zones.',

  'picture.latitude.none': 'none comes good',
  'picture.latitude.stretch': '{from}° to {to}°, {what}',
  'picture.latitude.tick': '{degrees}°',
  'picture.latitude.summary': 'You stand at {here}. What does best from the equator on: {stretches}.',
  'picture.latitude.table': 'What does best at each degree',
  'picture.latitude.column-latitude': 'Latitude',
  'picture.latitude.column-best': 'Does best',
  'picture.latitude.column-sown': 'Sown',
  'picture.latitude.column-comes': 'Comes to',
  'picture.latitude.kinds': 'The five kinds, sown that day',
  'picture.latitude.column-kind': 'Kind',
  'picture.latitude.column-needs': 'Asks for a sun up',
  'picture.latitude.column-long': 'Has it',
  'picture.latitude.column-bulbs': 'Bulbs start',
  'picture.latitude.column-tops': 'Tops go over',
} as const;
