/** Por qué una respuesta es la que es; códigos y valores vienen del motor. */
export const reasons = {
  'reason.good':
    'Cuando los días llegan a {sunUpH} de sol y empiezan los bulbos, se {leaves, plural, one {ha hecho cerca de # hoja} other {han hecho cerca de # hojas}}: bastan para un bulbo de {diameterMm} de ancho.',
  'reason.small-few-leaves':
    'Los bulbos empiezan con cerca de {leaves, plural, one {# hoja} other {# hojas}}, y hacen falta unas 13 para un bulbo de tamaño completo: estos se quedan en unos {diameterMm} de ancho.',
  'reason.small-season':
    'Hojas hay de sobra, pero las semanas en que se llenan los bulbos son demasiado pocas, calurosas o nubladas: los bulbos llegan a {diameterMm} de ancho, muy por debajo de lo mejor de este lugar.',
  'reason.days-too-short':
    'El día más largo tiene aquí {longestSunUpH} de sol, y las cebollas {type} piden unas {neededSunUpH} para empezar los bulbos.',
  'reason.never-up':
    'La semilla rara vez brota: el bancal está demasiado frío o demasiado caliente para ella.',
  'reason.too-late':
    'Las plantas aún no son bastante grandes para hacer bulbo mientras los días son largos, y siguen verdes cuando se acortan.',
  'reason.winter-cold':
    'La helada fuerte mata {killedTenths, plural, =0 {unas pocas plantas} =10 {casi todas las plantas} one {cerca de # planta de cada 10} other {cerca de # plantas de cada 10}} antes de la primavera.',
  'reason.winter-lifted':
    'Las plantas entran en el invierno demasiado pequeñas para agarrarse: la helada levanta la tierra mojada y saca {killedTenths, plural, =0 {unas pocas plantas} =10 {casi todas las plantas} one {cerca de # planta de cada 10} other {cerca de # plantas de cada 10}}. Siembra antes, o vuelve a apretarlas y cúbrelas.',
  'reason.bolts-sets':
    'Los bulbillos recuerdan el frío: {boltedTenths, plural, =0 {unas pocas plantas se espigan} =10 {casi todas las plantas se espigan} one {cerca de # planta de cada 10 se espiga} other {cerca de # plantas de cada 10 se espigan}}. Los bulbillos más pequeños, o guardados en calor, lo hacen menos.',
  'reason.bolts-cold':
    'Las plantas ya son grandes cuando llega el frío, y lo toman por un invierno pasado: {boltedTenths, plural, =0 {unas pocas se espigan} =10 {casi todas se espigan} one {cerca de # de cada 10 se espiga} other {cerca de # de cada 10 se espigan}}.',
  'reason.unripe-autumn':
    'Los bulbos empiezan, pero las semanas cálidas se acaban antes de que maduren: los cuellos se quedan gruesos.',
  'reason.window':
    'Empezando entonces, se {leaves, plural, one {ha hecho cerca de # hoja} other {han hecho cerca de # hojas}} cuando los días llegan a {sunUpH} de sol y empiezan los bulbos.',
  'reason.no-window-good': 'Las semanas que acaban bien son muy pocas seguidas, o nadie empieza en ellas.',
  'reason.no-window-small':
    'Aun en la mejor semana los bulbos se quedan en unos {diameterMm} de ancho. Otra manera de empezar puede ir mejor; también las cebolletas de manojo, las chalotas, las cebollas multiplicadoras o los puerros.',
  'reason.no-window-no-bulb':
    'En ninguna semana empiezan los bulbos: el día más largo tiene {longestSunUpH} de sol, y esta clase pide unas {neededSunUpH} mientras las plantas tienen tamaño y calor suficientes. Cultiva en su lugar cebolletas de manojo, chalotas, cebollas multiplicadoras o puerros.',
  'reason.no-window-not-ripe':
    'En ninguna semana maduran los bulbos antes de que se acaben las semanas cálidas. Otra manera de empezar puede ir mejor; también las cebolletas de manojo, las chalotas, las cebollas multiplicadoras o los puerros.',
  'reason.no-window-bolts':
    'En todas las semanas que dan bulbos se espigan demasiadas plantas. Otra manera de empezar puede ir mejor; también las cebolletas de manojo, las chalotas, las cebollas multiplicadoras o los puerros.',
  'reason.no-window-winter-killed':
    'El invierno mata demasiadas plantas en todas las semanas que serían bastante tempranas. Otra manera de empezar puede ir mejor; también las cebolletas de manojo, las chalotas, las cebollas multiplicadoras o los puerros.',
} as const;
