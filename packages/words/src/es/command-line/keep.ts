/** La orden que abastece una cocina de cebollas. */
export const keepCommand = {
  'help.keep':
    'Qué plantar para que una cocina tenga cebollas hasta la próxima cosecha: qué clases, cuándo, cuántas, cuánto duran guardadas y qué comprar. Un archivo de huerto ocupa el lugar de la ciudad: se toman su lugar, su cocina y sus cebollas.',
  'help.keep.people': 'cuántas personas comen, de {min} a {max}',
  'help.keep.grams':
    'lo que comen entre todas en una semana, en g de bulbos del almacén (si falta: lo usual en el país)',
  'help.keep.store':
    'dónde se guardan las cebollas: {places}, o su aire todo el año en °C y % de humedad, como 8,70 (si falta: {usual})',
  'help.keep.like': 'qué debe haber entre ellas, separado por comas: {likes}',
  'help.keep.seed-age': 'qué edad tiene la semilla: de la vieja hace falta más',
  'help.keep.place': 'uno de los lugares de tu archivo de huerto, por su id o su nombre',
  'help.keep.planting':
    'dice además si arrancar esta plantación de tu archivo de huerto, y cómo se seca; por su id o su nombre',
  'clash.garden-says-place': 'el huerto ya tiene su lugar y sus cebollas.',

  'keep-table.lift': '{name}, arrancar y secar:',
  'keep-table.no-bulbs': 'La mayoría de los años no da bulbos: no hay nada que arrancar y secar.',
  'keep-table.lots': 'Qué empezar:',
  'keep-table.year': 'El año en el almacén, al final de cada mes:',
  'keep-table.month': 'Mes',
  'keep-table.need': 'Hace falta',
  'keep-table.store': 'Guardado',
  'keep-table.span': '8 de cada 10 años',
  'keep-table.lost': 'Perdido',
  'keep-table.from': 'Del lote',
  'keep-table.supplied': 'Abastecido',
  'keep-table.gaps': 'Cuándo puede estar vacía la despensa:',
  'keep-table.in-store': 'Guardado ahora:',
  'keep-table.eat-first': 'Qué comer primero:',
  'keep-table.shopping': 'Qué comprar:',

  'error.keep-people':
    'Falta --people: di cuántas personas comen, por ejemplo --people 4{garden, select, yes {, o da a {file} una cocina con sus personas} other {}}.',
  'error.keep-store-form':
    '--store {value}: se esperaba {expected}, o temperatura y humedad como 8,70 (con coma decimal: "8,5;70").',
  'error.keep-place-no-garden':
    '--place {value}: ¿un lugar de qué huerto? Nombra tu archivo de huerto en vez de una ciudad: neckfall keep mi.neckfall.json --place {value}',
  'error.keep-planting-no-garden':
    '--planting {value}: ¿en qué huerto? Nombra tu archivo de huerto en vez de una ciudad: neckfall keep mi.neckfall.json --planting {value}',
  'error.keep-placeless':
    '{file} no tiene ningún lugar. Añade uno en la aplicación, o nombra una ciudad en vez del archivo.',
  'error.keep-which-place': '{file} tiene {count, number} lugares: di cuál con --place: {expected}.',
  'error.keep-place-unknown':
    '--place {value}: {count, plural, =0 {ningún lugar de {file} tiene este id o nombre.{near, plural, =0 {} other { Los más parecidos: {nearest}.}} Tiene} other {# lugares de {file} se llaman así. Nombra uno por su id:}} {expected}.',
} as const;
