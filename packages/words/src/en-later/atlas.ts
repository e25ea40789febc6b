/** What maps of onions say: what stands out, bands of latitude, the key. */
export const atlas = {
  'atlas.kind.one':
    '{kind, select, short {Short-day} intermediate {Intermediate-day} other {Long-day}} onions do best on nearly all of this ground.',
  'atlas.kind.two':
    '{first, select, short {Short-day} intermediate {Intermediate-day} other {Long-day}} onions do best on {tenths, plural, one {a tenth} other {# tenths}} of the ground that bears onions, {second, select, short {short-day} intermediate {intermediate-day} other {long-day}} ones on most of the rest.',
  'atlas.kind.north':
    '{long, select, none {Short-day onions do best up to about {short}° N; farther north it is mixed.} other {Long-day onions do best north of about {long}° N{short, select, none {; nearer the equator it is mixed.} other {, short-day ones up to about {short}° N{between, select, yes {; between them it is mixed.} other {.}}}}}}',
  'atlas.kind.south':
    '{long, select, none {Short-day onions do best down to about {short}° S; farther south it is mixed.} other {Long-day onions do best south of about {long}° S{short, select, none {; nearer the equator it is mixed.} other {, short-day ones down to about {short}° S{between, select, yes {; between them it is mixed.} other {.}}}}}}',
  'atlas.good': 'Taken over all this ground, onions at their best start come good {years}.',
  'atlas.good.bands': 'They do best {best}: {bestYears}. They do worst {least}: {leastYears}.',
  'atlas.start':
    '{zone, select, north {North of the tropics the best start mostly falls in} tropics {In the tropics the best start mostly falls in} south {South of the tropics the best start mostly falls in} other {The best start mostly falls in}} {month, select, 1 {January} 2 {February} 3 {March} 4 {April} 5 {May} 6 {June} 7 {July} 8 {August} 9 {September} 10 {October} 11 {November} other {December}}.',
  'atlas.tops':
    '{zone, select, north {North of the tropics tops mostly go over in} tropics {In the tropics tops mostly go over in} south {South of the tropics tops mostly go over in} other {Tops mostly go over in}} {month, select, 1 {January} 2 {February} 3 {March} 4 {April} 5 {May} 6 {June} 7 {July} 8 {August} 9 {September} 10 {October} 11 {November} other {December}}.',
  'atlas.month':
    '{month, select, 1 {January} 2 {February} 3 {March} 4 {April} 5 {May} 6 {June} 7 {July} 8 {August} 9 {September} 10 {October} 11 {November} other {December}}',
  'atlas.size': 'Bulbs come to about {size} across, taken over all this ground.',
  'atlas.size.bands':
    'They are largest {largest}, about {largestSize}, and smallest {smallest}, about {smallestSize}.',
  'atlas.bare':
    '{tenths, plural, =0 {On a little of the ground} one {On a tenth of the ground} other {On # tenths of the ground}} good bulbs come in hardly any year.',
  'atlas.bare-all': 'Good bulbs come in hardly any year on this ground.',
  'atlas.band': 'from {low}° to {high}° {side, select, south {S} other {N}}',
  'atlas.row.kind':
    '{kind}, on {tenths, plural, =10 {nearly all of it} one {a tenth of it} other {# tenths of it}}',
  'atlas.column.band': 'Latitude',
  'atlas.column.kind': 'Does best',
  'atlas.column.good': 'Good bulbs',
  'atlas.column.start': 'Best start, mostly',
  'atlas.column.tops': 'Tops over, mostly',
  'atlas.column.size': 'Bulbs, about',
  'atlas.column.points': 'Points',

  'picture.atlas.rows': '7 rows of 10: good bulbs in 7 years in 10',
  'picture.atlas.bare': 'hardly ever good bulbs',
  'picture.atlas.unknown': 'land without a mark: the point lies in water, or too far from climate records',
  'picture.atlas.hand': 'the hand goes round the year as on a clock: up is 1 January',
  'picture.atlas.quarter':
    '{quarter, select, 1 {January to March} 2 {April to June} 3 {July to September} other {October to December}}',
  'picture.atlas.disc': '{size} across',
  'picture.atlas.summary':
    'Map of {region}: {shows, select, kind {the kind of onion that does best} good {in how many years in ten onions come good} start {the best start} tops {when tops go over} other {how large bulbs get}}. {lead}',
  'picture.atlas.source':
    'Neckfall {version} · {region}, a point every {step}°, {years, plural, one {# made-up year} other {# made-up years}} of weather at each · {sources} · {date}',
} as const;
