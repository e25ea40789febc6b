/** La página que hace una hoja para repartir. */
export const appSheet = {
  'app.sheet': 'Una hoja para repartir: {place}',
  'app.sheet.lead':
    'Una página para imprimir o guardar en un archivo: qué comprar, cuándo, cómo saber que es la hora, un año de labores. Los números son los de las otras páginas.',
  'app.sheet.own': 'Lo que dices en ella',
  'app.sheet.heading': 'Título',
  'app.sheet.heading.hint': 'Déjalo vacío para «{usual}».',
  'app.sheet.note': 'Tu nota',
  'app.sheet.note.hint': 'Cuándo y dónde os reunís, a quién preguntar, qué cultiváis.',
  'app.sheet.count': '{words, plural, one {# palabra} other {# palabras}} de {most} como mucho.',
  'app.sheet.too-long':
    '{words, plural, one {# palabra} other {# palabras}} en {characters, number} caracteres: caben como mucho {most} palabras en {mostCharacters, number}. En la hoja queda lo último que cupo.',
  'app.sheet.paper': 'Papel',
  'app.sheet.paper.a4': 'A4',
  'app.sheet.paper.letter': 'Carta',
  'app.sheet.preview': 'La hoja tal como se imprime',
  'app.sheet.print': 'Imprimirla',
  'app.sheet.keep': 'Guardar como un archivo HTML',
  'app.sheet.kept': 'Guardada como {file}.',
  'app.sheet.failed': 'No se pudo hacer el archivo ({reason}).',
  'app.sheet.larger': 'En letra más pequeña y con líneas de menos, para que todo quepa en una página.',
  'app.sheet.command':
    'Para muchos lugares a la vez está la línea de órdenes: neckfall handout --batch, en HTML o PDF.',
} as const;
