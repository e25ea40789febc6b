export const mapCommand = {
  'help.atlas':
    'Un mapa de cebollas: qué tipo va mejor en los puntos de una región, cuándo se empieza y cómo sale.',
  'help.map-join': 'join, para hacer un mapa de las partes de varias ejecuciones',
  'help.map-parts': 'las partes que se unen',
  'help.map-region':
    'world, una parte (europe, africa, south-america …), un país, o los bordes SUR,OESTE,NORTE,ESTE en grados (world)',
  'help.map-step': 'de punto a punto, grados (1)',
  'help.map-class': 'solo cebollas de este tipo: short, intermediate o long',
  'help.map-start': 'solo empezadas así: direct-seed, raised-seedlings, bought-transplants o sets',
  'help.map-every': 'todos los tipos y formas de empezar en cada punto, no solo lo que va mejor',
  'help.map-shard':
    'calcular una parte de varias, como 2/8; --out nombra la parte, y `neckfall atlas join` hace el mapa de todas',
  'help.map-shows':
    'qué muestra el dibujo: el tipo que va mejor, años buenos de diez, mejor comienzo, caída de hojas, tamaño (kind)',
  'help.map-years': 'años de tiempo probados en cada punto, de 1 a 200 (10)',
  'mapping.progress':
    '{share} % hecho, {rate} puntos por segundo, {minutes, plural, =0 {quedan unos {seconds, plural, one {# segundo} other {# segundos}}} other {quedan unos {minutes, plural, one {# minuto} other {# minutos}}}}',
  'mapping.goes-on':
    'Sigue de una ejecución anterior: hay {done, number} de {tiles, number} {tiles, plural, one {pieza} other {piezas}} del mapa.',
  'mapping.stopped': 'Lo calculado queda en {file}: la misma orden sigue desde ahí.',
  'mapping.shard-done':
    'La parte {number} de {of} está entera: {tiles, plural, one {# pieza} other {# piezas}} en {file}. Con todas las partes, `neckfall atlas join` hace el mapa.',
  'mapping.no-land':
    'No hay tierra cubierta en los puntos de esta región, separados {step}°: tome un --step menor o una región mayor.',
  'mapping.table': 'Por franjas de latitud',
  'mapping.points':
    'Los puntos están en múltiplos enteros de {step}° de latitud y longitud, en tierra; su altura es la del pueblo o punto climático más cercano.',
  'mapping.years':
    'Cada uno se prueba en {years, plural, one {# año de tiempo inventado} other {# años de tiempo inventados}} (serie {seed}), empezando un día de cada dos semanas del año; `neckfall season --at` con --years {years} da las mismas cifras para un punto, un tipo y un comienzo.',
  'mapping.sure':
    'Que un comienzo sea el mejor de los 26 es una regla práctica: en 97 de cada 100 tipos y formas probados lo fue. Lo menos seguro: las horas de día con las que un tipo empieza el bulbo, conocidas a media hora más o menos.',
  'error.map-word':
    'No se esperaba «{value}»: un mapa es de una --region, por ejemplo neckfall atlas --region europe. Para hacerlo de partes: neckfall atlas join PARTE…',
  'error.map-region':
    '--region {value}: se esperaba world, una parte, un país por nombre o código, o los bordes SUR,OESTE,NORTE,ESTE en grados.{near, plural, =0 {} other { ¿Quería decir {nearest}?}}',
  'error.map-box':
    '--region {value}: se esperaban los bordes SUR,OESTE,NORTE,ESTE en grados, el sur por debajo del norte, por ejemplo --region 35,-10,60,30 (con comas decimales: "35;-10;60,5;30"). El este puede quedar al oeste del oeste: entonces cruza la línea de cambio de fecha.',
  'error.map-shard':
    '--shard {value}: se esperaba una parte y cuántas hay, como 2/8 para la segunda de ocho.',
  'error.map-shard-out': '--shard {value} escribe una parte de un mapa: nombre su archivo con --out.',
  'error.map-shard-form':
    '{field} no va con --shard: una parte aún no es un mapa. `neckfall atlas join` da el mapa de todas las partes en cualquier forma.',
  'error.map-ending':
    '--out {value}: se esperaba un archivo que termine en {expected}; o diga --json o --csv.',
  'error.map-part-other':
    '{value} es parte de otro mapa, con otros ajustes. Nombre otro --out, o quite ese archivo si ya no lo necesita.',
  'error.map-part-none': '{value} no es parte de un mapa y se deja como está. Nombre otro archivo.',
  'error.map-part-missing': '{value} no se pudo leer ({reason}). Se esperaba una parte escrita con --shard.',
  'error.map-part-engine':
    '{value} se hizo con la versión {engine}, esta es {own}: sus cifras pueden diferir. Haga todas las partes con una versión.',
  'error.map-part-changed': '{value} cambió mientras se leía. Ejecute la orden de nuevo.',
  'error.map-parts-differ':
    '{value} es de otro mapa que {first}: las partes se unen cuando se hicieron con los mismos ajustes.',
  'error.map-parts-missing':
    '{missing, plural, one {Una de {tiles, number} piezas no está} other {# de {tiles, number} piezas no están}} en ninguna de estas partes; la primera es la {first, number}. Ejecute de nuevo las partes que faltan o se pararon, y luego una.',
  'error.map-no-parts':
    '¿Qué partes? Nombre los archivos escritos con --shard: neckfall atlas join PARTE… --out mapa.geojson',
  'clash.parts-say-all': 'las partes dicen de qué son.',
} as const;
