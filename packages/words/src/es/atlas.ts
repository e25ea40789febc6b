export const atlas = {
  'atlas.kind.one':
    'Las cebollas {kind, select, short {de día corto} intermediate {de día intermedio} other {de día largo}} son las que mejor van en casi todo este terreno.',
  'atlas.kind.two':
    'Las cebollas {first, select, short {de día corto} intermediate {de día intermedio} other {de día largo}} van mejor en {tenths, plural, one {una décima parte} other {# décimas partes}} del terreno que da cebollas; las {second, select, short {de día corto} intermediate {de día intermedio} other {de día largo}}, en casi todo lo demás.',
  'atlas.kind.north':
    '{long, select, none {Las cebollas de día corto van mejor hasta unos {short}° N; más al norte hay de todo.} other {Las cebollas de día largo van mejor al norte de unos {long}° N{short, select, none {; más cerca del ecuador hay de todo.} other {, las de día corto hasta unos {short}° N{between, select, yes {; entre medias hay de todo.} other {.}}}}}}',
  'atlas.kind.south':
    '{long, select, none {Las cebollas de día corto van mejor hasta unos {short}° S; más al sur hay de todo.} other {Las cebollas de día largo van mejor al sur de unos {long}° S{short, select, none {; más cerca del ecuador hay de todo.} other {, las de día corto hasta unos {short}° S{between, select, yes {; entre medias hay de todo.} other {.}}}}}}',
  'atlas.good': 'En todo este terreno, empezadas en su mejor fecha, las cebollas salen bien {years}.',
  'atlas.good.bands': 'Donde mejor van es {best}: {bestYears}. Donde peor, {least}: {leastYears}.',
  'atlas.start':
    '{zone, select, north {Al norte de los trópicos la mejor fecha para empezar suele caer en} tropics {En los trópicos la mejor fecha para empezar suele caer en} south {Al sur de los trópicos la mejor fecha para empezar suele caer en} other {La mejor fecha para empezar suele caer en}} {month, select, 1 {enero} 2 {febrero} 3 {marzo} 4 {abril} 5 {mayo} 6 {junio} 7 {julio} 8 {agosto} 9 {septiembre} 10 {octubre} 11 {noviembre} other {diciembre}}.',
  'atlas.tops':
    '{zone, select, north {Al norte de los trópicos las hojas suelen caer en} tropics {En los trópicos las hojas suelen caer en} south {Al sur de los trópicos las hojas suelen caer en} other {Las hojas suelen caer en}} {month, select, 1 {enero} 2 {febrero} 3 {marzo} 4 {abril} 5 {mayo} 6 {junio} 7 {julio} 8 {agosto} 9 {septiembre} 10 {octubre} 11 {noviembre} other {diciembre}}.',
  'atlas.month':
    '{month, select, 1 {enero} 2 {febrero} 3 {marzo} 4 {abril} 5 {mayo} 6 {junio} 7 {julio} 8 {agosto} 9 {septiembre} 10 {octubre} 11 {noviembre} other {diciembre}}',
  'atlas.size': 'En todo este terreno los bulbos llegan a unos {size} de ancho.',
  'atlas.size.bands':
    'Los mayores se dan {largest}, de unos {largestSize}; los menores, {smallest}, de unos {smallestSize}.',
  'atlas.bare':
    '{tenths, plural, =0 {En un poco del terreno} one {En una décima parte del terreno} other {En # décimas partes del terreno}} casi ningún año salen buenos bulbos.',
  'atlas.bare-all': 'En este terreno casi ningún año salen buenos bulbos.',
  'atlas.band': 'de {low}° a {high}° {side, select, south {S} other {N}}',
  'atlas.row.kind':
    '{kind}, en {tenths, plural, =10 {casi todo} one {una décima parte} other {# décimas partes}}',
  'atlas.column.band': 'Latitud',
  'atlas.column.kind': 'La que mejor va',
  'atlas.column.good': 'Buenos bulbos',
  'atlas.column.start': 'Mejor comienzo, casi siempre',
  'atlas.column.tops': 'Caen las hojas, casi siempre',
  'atlas.column.size': 'Bulbos, unos',
  'atlas.column.points': 'Puntos',

  'picture.atlas.rows': '7 surcos de 10: buenos bulbos en 7 de cada 10 años',
  'picture.atlas.bare': 'buenos bulbos casi nunca',
  'picture.atlas.unknown':
    'tierra sin marca: el punto está en agua, o demasiado lejos de los registros del clima',
  'picture.atlas.hand': 'la aguja da la vuelta al año como la de un reloj: arriba está el 1 de enero',
  'picture.atlas.quarter':
    '{quarter, select, 1 {de enero a marzo} 2 {de abril a junio} 3 {de julio a septiembre} other {de octubre a diciembre}}',
  'picture.atlas.disc': '{size} de ancho',
  'picture.atlas.summary':
    'Mapa de {region}: {shows, select, kind {la clase de cebolla que mejor va} good {en cuántos años de cada diez salen bien las cebollas} start {la mejor fecha para empezar} tops {cuándo caen las hojas} other {de qué tamaño son los bulbos}}. {lead}',
  'picture.atlas.source':
    'Neckfall {version} · {region}, un punto cada {step}°, {years, plural, one {# año de tiempo inventado} other {# años de tiempo inventados}} en cada uno · {sources} · {date}',
} as const;
