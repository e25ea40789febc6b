/** Las labores de los cultivos, en la línea de órdenes. */
export const jobsCommand = {
  'help.jobs':
    'Las labores de un cultivo: qué hacer esta semana y qué viene, cuándo y por qué. Un archivo de huerto solo da todas sus plantaciones.',
  'help.jobs.planting': 'una plantación de tu archivo de huerto, por su id o su nombre',
  'help.jobs.from': 'labores desde este día, como AAAA-MM-DD o MM-DD (si falta: todas)',
  'help.jobs.to': 'labores hasta este día',
  'help.jobs.ics':
    'escribe además las labores en este archivo como calendario (*.ics); escrito otra vez, renueva lo que el calendario tiene',
  'help.jobs.done': 'anota en el archivo de huerto que una labor está hecha, como weed o feed-2',
  'help.jobs.leave-out': 'anota que una labor se deja',
  'help.jobs.put-off': 'anota que una labor se aplaza a un día, como weed:05-20',

  'jobs.week': '{place}, esta semana, {range}:',
  'jobs.from': '{place}, desde el {date}:',
  'jobs.between': '{place}, {range}:',
  'jobs.none': 'Nada que hacer en esos días.',
  'jobs.unsourced': 'Sin fuente, por práctica común o de memoria: {jobs}.',
  'jobs.week.none': 'Nada que hacer esta semana.',
  'jobs.week.over': 'No queda nada que hacer.',
  'jobs.coming': 'Lo que viene:',
  'jobs.past': 'Hecho o pasado:',
  'jobs.of': '{name}: {what}',
  'jobs.left-out': 'Plantaciones que no se cuentan:',
  'jobs.left-out.one': '{name}: {why}',
  'jobs.why.open': 'aún no dice su cebolla, su comienzo o su día.',
  'jobs.why.over': 'sus labores han terminado.',
  'jobs.cautions': 'Ten cuidado:',

  'error.jobs-none':
    '{value}: {count, plural, =0 {este huerto no tiene plantaciones} other {ninguna plantación tiene labores por venir ({names})}}. Añade una en la aplicación, o nombra un lugar y un plan.',
  'error.to-before-from': '--to {value} es anterior al {from}. Se esperaba el mismo día o uno posterior.',
  'error.one-at-a-time': 'Se dieron {field} y {other} a la vez: di una sola cosa.',
  'error.put-off-form':
    '--put-off {value}: se esperaba una labor, dos puntos y el día, por ejemplo weed:05-20.',
  'error.job-unknown':
    '{field} {value}: {name} no tiene esa labor.{near, plural, =0 {} other { ¿Querías decir {nearest}?}} Tiene {expected}.',
  'error.garden-full-jobs':
    '{file} tiene {most, number} notas de labores, las más que caben en un huerto. Divide el archivo en varios huertos.',
  'error.ics-no-file': '--ics {value} no es un archivo que se pueda escribir. Nombra un archivo (*.ics).',
  'error.ics-other':
    '--ics {value} contiene algo distinto de las labores escritas por neckfall, y se perdería. Nombra otro archivo, y que tu calendario lo lea.',
} as const;
