/** Muchos lugares de una vez. */
export const batch = {
  'help.batch':
    'muchos lugares de una vez: un archivo CSV con una fila cada uno, o - para la entrada estándar; una línea de JSON por fila',
  'batch.progress': '{rows, number} filas respondidas, {rate, number} por segundo',
  'batch.some-failed':
    '{failed, plural, one {# fila de {rows, number} quedó} other {# filas de {rows, number} quedaron}} sin respuesta; {failed, plural, one {su línea dice} other {sus líneas dicen}} por qué. La primera: {first}',
  'error.batch-missing':
    '--batch {value}: no existe ese archivo. Se esperaba un archivo CSV con las columnas {expected}.',
  'error.batch-folder':
    '--batch {value} es una carpeta: se esperaba un archivo CSV con las columnas {expected}.',
  'error.batch-unreadable':
    '--batch {value} no se pudo leer ({reason}). Se esperaba un archivo CSV que puedas leer.',
  'error.batch-encoding':
    '--batch {value} no es texto en UTF-8, ni en UTF-16 con marca de orden de bytes. Guárdalo como “CSV UTF-8”.',
  'error.batch-too-big':
    '--batch {value} pasa de {limit, number} MB, lo más que se lee de una vez. Córtalo en varios archivos.',
  'error.batch-too-many':
    '--batch {value} tiene más de {limit, number} líneas, las más que se responden de una vez. Córtalo en varios archivos.',
  'error.batch-first-line':
    '--batch {value}, línea 1: más de {limit, number} caracteres antes de que acabe la línea. Se esperaba un archivo CSV con los nombres de sus columnas en la primera línea.',
  'error.batch-empty':
    '--batch {value} no tiene filas: se esperaba una línea que nombre las columnas y después una línea por lugar.',
  'error.batch-column':
    '--batch {value}, línea 1: ninguna columna se llama "{column}".{near, plural, =0 {} other { ¿Querías decir {nearest}?}} Las columnas son {expected}.',
  'error.batch-column-twice':
    '--batch {value}, línea 1: la columna "{column}" aparece dos veces. Quita una de ellas.',
  'error.batch-column-missing':
    '--batch {value}, línea 1: falta la columna "{column}". Las columnas son {expected}; latitude y longitude son necesarias.',
  'error.batch-none-answered':
    '--batch {value}: {rows, plural, one {su única fila quedó} other {todas sus # filas quedaron}} sin respuesta. La primera: {first}',
  'error.not-in-batch': '{field} no va con --batch: {why} Quita uno de los dos.',
  'clash.batch-has-places': 'el archivo nombra los lugares.',
  'clash.batch-is-lines': 'la respuesta es una línea de JSON por fila.',
  'clash.record-of-one-place': 'un registro del tiempo es de un solo lugar.',
  'error.row-too-long':
    'Línea {line}: más de {limit, number} caracteres antes de que acabe la línea. ¿Quedó abierta una comilla?',
  'error.row-long-cell': 'Línea {line}: una celda tiene más de {limit, number} caracteres. Acórtala.',
  'error.row-encoding': 'La línea {line} no es texto. Guarda el archivo como “CSV UTF-8”.',
  'error.row-cells':
    'La línea {line} tiene {received, plural, one {# celda} other {# celdas}} y la primera línea nombra {expected, plural, one {# columna} other {# columnas}}. ¿Falta un separador, o una comilla?',
  'error.row-empty': '{field} está vacío: se esperaban grados de −{most} a {most}.',
  'error.row-date-limits':
    '{field} {value} está fuera de los límites: se esperaba una fecha del {from} al {to}.',
} as const;
