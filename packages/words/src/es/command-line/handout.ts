/** Hojas para repartir, como las hace la línea de órdenes. */
export const handoutCommand = {
  'help.handout':
    'Una página para repartir sobre un lugar: qué comprar, cuándo, cómo saber que es la hora, precauciones, un año de labores. En HTML o PDF.',
  'help.handout.batch':
    'muchas hojas a la vez, un archivo CSV con una fila cada una: id, place (o latitude, longitude, elevation_m, name) y, si quieres, heading, note, paper, units, lang',
  'help.handout.heading': 'tu propio título, de hasta {words} palabras (por defecto: el lugar)',
  'help.handout.note': 'tu propia nota, de hasta {words} palabras; un salto de línea empieza un párrafo',
  'help.handout.paper': 'papel (por defecto: letter con unidades de EE. UU., si no a4)',
  'help.handout.out': 'el archivo que escribir, *.html o *.pdf; con --batch, la carpeta para todos',
  'help.handout.as': 'con --batch: qué archivos hacer de cada fila (por defecto: both)',
  'sheets.written':
    '{rows, plural, one {Una hoja} other {# hojas}} en {folder}, {files, plural, one {un archivo} other {# archivos}}.',
  'sheets.some-failed':
    '{failed, plural, one {Una fila no dio hoja} other {# filas no dieron hoja}}, como se dice arriba.',
  'sheets.row': '{where}: {why}',
  'sheets.row-line': 'línea {line}',
  'error.sheet-no-file':
    '¿Qué archivo? Da --out con un nombre que acabe en .html o .pdf, o --json para lo que dice la hoja.',
  'error.sheet-file-kind': '--out {value}: se esperaba un nombre que acabe en .html o .pdf.',
  'error.sheet-no-folder': '--batch necesita --out con la carpeta en la que van las hojas.',
  'error.sheet-not-folder': '--out {value} es un archivo: con --batch, nombra una carpeta.',
  'error.sheet-too-long':
    '{field}: {words, plural, one {# palabra} other {# palabras}} en {characters, number} caracteres; en una página caben como mucho {mostWords} palabras en {mostCharacters}. Acórtalo.',
  'error.sheet-letters':
    'A las letras de nuestros PDF les falta {letters}. Escribe esta hoja en HTML, que toma las de la máquina en que se lee.',
  'error.sheet-other-file':
    '{value} ya está ahí y no es una hoja nuestra: se queda como está. Muévelo o da otro id a la fila.',
  'error.sheet-as-one': '--as va con --batch: una sola hoja se reconoce por el final de --out.',
  'error.row-no-place':
    'la fila no nombra ningún lugar: se esperaba un pueblo en place, o grados en latitude y longitude.',
  'error.batch-no-place':
    '--batch {value}, línea 1: ninguna columna nombra los lugares. Se esperaba place, o latitude y longitude. Las columnas son {expected}.',
  'clash.sheets-are-files': 'con él las hojas se escriben como archivos.',
} as const;
