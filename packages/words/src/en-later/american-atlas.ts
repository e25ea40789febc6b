/** What American gardeners say otherwise of maps. */
export const americanAtlas = {
  'atlas.tops':
    '{zone, select, north {North of the tropics tops mostly fall in} tropics {In the tropics tops mostly fall in} south {South of the tropics tops mostly fall in} other {Tops mostly fall in}} {month, select, 1 {January} 2 {February} 3 {March} 4 {April} 5 {May} 6 {June} 7 {July} 8 {August} 9 {September} 10 {October} 11 {November} other {December}}.',
  'atlas.column.tops': 'Tops fall, mostly',
  'picture.atlas.summary':
    'Map of {region}: {shows, select, kind {the kind of onion that does best} good {in how many years in ten onions come good} start {the best start} tops {when tops fall} other {how large bulbs get}}. {lead}',
  'app.atlas.shows.tops': 'Tops fall',
  'app.atlas.line':
    '{type}, {start}: good bulbs {years}. Best start {startDay}, tops fall {tops}, bulbs {size}.',
  'app.atlas.point.tops': 'Tops fall',
  'app.teach.map':
    'Which onion does best where, in how many years it comes good, when it is started, when its tops fall.',
} as const;
