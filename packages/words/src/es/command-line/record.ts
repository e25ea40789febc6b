/** Lo que se vio de una plantación, anotado en su archivo de huerto. */
export const record = {
  'help.record':
    'Anota en tu archivo de huerto lo que se vio de una plantación, o lo que se le hizo, y muestra todo lo que el archivo guarda de ella.',
  'help.record.garden': 'tu archivo de huerto (*.neckfall.json); se modifica',
  'help.record.planting': 'una plantación del archivo de huerto, por su id o su nombre',
  'help.record.date': 'el día en que se vio, como AAAA-MM-DD o MM-DD, el último de esos días (si falta: hoy)',
  'help.record.leaves': 'hojas verdes en pie de una planta; la media si se miraron varias',
  'help.record.neck': 'ancho del cuello, en mm (--units us: pulgadas)',
  'help.record.bulb': 'ancho del bulbo por su parte más gruesa, en mm (--units us: pulgadas)',
  'help.record.stand': 'plantas en pie, en total',
  'help.record.flowering': 'plantas con tallo de flor, en total',
  'help.record.tops-over': 'parte de las plantas con las hojas caídas, de 0 a 1',
  'help.record.looked-at': 'plantas que se miraron (si falta: una)',
  'help.record.watered': 'agua dada a la plantación, en litros (--units us: galones)',
  'help.record.fed': 'abono dado: sus números y gramos, por ejemplo 10-4-8:200 (--units us: onzas)',
  'help.record.lifted': 'se arrancó',
  'help.record.weighed': 'peso de los bulbos, en kg (--units us: libras)',
  'help.record.count': 'bulbos que se pesaron',
  'help.record.thick-necks': 'bulbos de los contados con el cuello grueso',
  'help.record.sound': 'bulbos del almacén que están sanos',
  'help.record.sprouted': 'bulbos del almacén que han brotado',
  'help.record.rotten': 'bulbos del almacén que se han podrido',
  'help.record.note': 'cualquier otra cosa, con tus palabras',

  'record.held':
    '{name}: anotado el {when}. {file} guarda ahora {count, plural, one {# anotación} other {# anotaciones}} de esta plantación.',
  'record.column.date': 'Fecha',
  'record.column.lookedAt': 'Miradas',
  'record.column.leavesGreen': 'Hojas',
  'record.column.neckMm': 'Cuello',
  'record.column.bulbMm': 'Bulbo',
  'record.column.standCount': 'En pie',
  'record.column.floweringCount': 'En flor',
  'record.column.topsOverShare': 'Hojas caídas',
  'record.column.wateredLitres': 'Agua',
  'record.column.fed': 'Abono',
  'record.column.lifted': 'Arrancada',
  'record.column.weighedKg': 'Peso',
  'record.column.bulbCount': 'Bulbos',
  'record.column.thickNeckCount': 'Cuello grueso',
  'record.column.soundCount': 'Sanos',
  'record.column.sproutedCount': 'Brotados',
  'record.column.rottenCount': 'Podridos',
  'record.column.note': 'Nota',
  'record.yes': 'sí',
  'record.percent': '{percent} %',
  'record.fed': '{product}: {weight}',

  'error.no-garden': '¿Qué huerto? Nombra tu archivo de huerto (*.neckfall.json).',
  'error.garden-no-file':
    '{field} {value} no es un archivo que se pueda cambiar. Nombra un archivo de huerto (*.neckfall.json).',
  'error.record-nothing':
    'No hay nada que anotar: da lo que se vio, por ejemplo --leaves 5 o --note "Escardado".',
  'error.fed-form':
    '--fed {value}: se esperaban los números del envase, dos puntos y el peso en {unit}, por ejemplo {example}.',
  'error.note-long':
    '--note: {length, number} caracteres son más de los que caben en una nota, {most, number}. Acórtala.',
  'error.garden-full':
    '{file} tiene {most, number} observaciones, lo más que tiene un huerto. Corta el archivo en varios huertos.',
  'error.garden-not-one':
    '{file} no es un archivo de huerto: su schema es "{found}", y se esperaba neckfall/garden@1. No se cambió nada.',
  'error.garden-changed-meanwhile':
    'Otro programa cambia {file} una y otra vez. No se anotó nada; inténtalo de nuevo cuando acabe.',
} as const;
