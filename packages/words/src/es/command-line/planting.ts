/** Plantings of a garden file in place of a place and a plan. */
export const planting = {
  'help.planting':
    'un cultivo de tu archivo de huerto, por su id o su nombre; el archivo (*.neckfall.json) va entonces en lugar de la población, y cuenta lo que se vio',
  'clash.planting-says-all': 'el cultivo y su lugar ya lo dicen.',
  'as-usual.phyllochron':
    'La rapidez con que salen tus hojas: la habitual de la clase, por lo que se ha visto.',
  'as-usual.ripening':
    'La rapidez con que maduran tus bulbos: la habitual de la clase, por lo que se ha visto.',
  'as-usual.criticalH':
    'La duración del día con que empiezan tus bulbos: la habitual de la clase, por lo que se ha visto.',
  'as-usual.growth': 'Lo que crecen tus plantas: lo habitual de la clase, por lo que se ha visto.',
  'error.planting-no-garden':
    '--planting {value}: ¿de qué huerto? Nombra tu archivo de huerto en lugar de una población: neckfall season my.neckfall.json --planting {value}',
  'error.garden-no-planting':
    '{value} es un archivo de huerto: di cuál de sus cultivos con --planting, por id o nombre.',
  'error.planting-unknown':
    '--planting {value}: ningún cultivo de {file} tiene ese id o nombre.{near, plural, =0 {} other { Lo más parecido: {nearest}.}} {count, plural, =0 {El archivo no tiene ninguno.} other {Tiene {expected}.}}',
  'error.planting-ambiguous':
    '--planting {value}: {count, number} cultivos de {file} se llaman así. Nombra uno por su id: {expected}.',
  'error.planting-placeless':
    '--planting {value}: {file} no tiene lugar para este cultivo. Dale el id de uno de los lugares del archivo (placeId).',
  'error.planting-open':
    '--planting {value}: {file} no dice su {missing, select, start {forma de empezar (start)} startDate {día de comienzo (startDate)} other {cebolla (cultivar, class o packetHours)}}. Añádelo en la aplicación o en el archivo.',
} as const;
