/** Lo que `neckfall weather` dice de los archivos. */
export const weatherFiles = {
  'help.weather-command':
    'Qué resulta ser un registro del tiempo, por su contenido: el de tu propia estación o el de un servicio meteorológico.',
  'help.weather-files':
    'uno o varios archivos de un mismo registro, también .gz o .zip; el posterior va antes que el anterior',
  'help.weather-days': 'añade cada día al JSON',
  'help.column': 'qué contiene una columna que se tomó mal, como "Out=tempMaxC:°F"; uno de {choices}',
  'help.dates': 'el orden de día, mes y año en las fechas (si no, se deduce de ellas)',
  'help.utc-offset': 'cuántas horas va el horario estándar del lugar por delante de UTC, como -3 o 5.5',

  'record.headline':
    '{files, plural, one {{file} contiene} other {Los # archivos juntos contienen}} {days, plural, one {# día} other {# días}} de tiempo, del {from} al {to}{absent, plural, =0 {} one {; # de ellos no tiene fila} other {; # de ellos no tienen fila}}.',
  'record.headline-typical':
    '{files, plural, one {{file} es un año típico} other {Los # archivos son años típicos}}: meses de años distintos puestos juntos. No es un tiempo que haya hecho, y ninguna temporada se prueba con él.',
  'record.file':
    '{files, plural, one {Es} other {{file}:}} {format}{named, select, yes {, estación {station}} other {}}{placed, select, yes {, en {latitude}, {longitude}} other {}}{elevation, select, none {} other {, a {elevation} de altitud}}.',
  'record.columns': '{files, plural, one {Sus columnas} other {Las columnas de todos}} se tomaron como:',
  'record.column.value': 'Valor',
  'record.column.days': 'Días',
  'record.column.missing': 'Faltan',
  'record.column.mean': 'Media',
  'record.column.most': 'Como máximo o mínimo',
  'record.column.file': 'Archivo',
  'record.column.name': 'Columna',
  'record.column.as': 'Tomada como',
  'record.column.unit': 'Unidad',
  'record.rain-in-all': '{rain} en total',
  'record.sun': '{sun} MJ/m²',
  'record.unused': 'Sin usar en {file}: {names}{more, plural, =0 {} other { y # más}}.',
  'record.no-doubts': 'Nada en él es dudoso.',
  'record.doubts':
    '{count, plural, one {# valor se dejó fuera o es dudoso} other {# valores se dejaron fuera o son dudosos}}:',
  'record.doubt':
    '{date}: {field} {value}, {why}; {leftOut, select, yes {se dejó fuera} other {queda como está}}.',
  'record.doubts-more': 'y {count, plural, one {uno más} other {# más}}',

  'record.field.tempMaxC': 'máxima del día',
  'record.field.tempMinC': 'mínima del día',
  'record.field.rainMm': 'lluvia',
  'record.field.solarMJ': 'sol',
  'record.as.date': 'fecha',
  'record.as.time': 'hora del día',
  'record.as.year': 'año',
  'record.as.month': 'mes',
  'record.as.day': 'día del mes',
  'record.as.hour': 'hora',
  'record.as.tempMinC': 'temperatura mínima',
  'record.as.tempMaxC': 'temperatura máxima',
  'record.as.tempC': 'temperatura exterior',
  'record.as.rainMm': 'lluvia desde la fila anterior',
  'record.as.rainDayMm': 'lluvia, contador que vuelve a cero a medianoche',
  'record.as.rainSumMm': 'lluvia, contador que sigue corriendo',
  'record.as.solarMJ': 'sol, su energía',
  'record.as.solarW': 'sol, su potencia',
  'record.why.quality-flag': 'señalado por su fuente',
  'record.why.out-of-range': 'más o menos de lo que da el tiempo',
  'record.why.min-above-max': 'por encima de la máxima del mismo día, así que no se usa ninguna',
  'record.why.outlier': 'lejos de los días de al lado',
  'record.why.accumulated': 'lluvia de varios días en uno',
  'record.why.stuck': 'igual un día tras otro',

  'record.format.own-table': 'una tabla de una estación propia',
  'record.format.ghcn-daily-fixed': 'GHCN-Daily (NOAA), una línea por mes',
  'record.format.ghcn-daily-table': 'GHCN-Daily (NOAA), una tabla',
  'record.format.ncei-daily-summaries': 'resúmenes diarios del NCEI (NOAA)',
  'record.format.gsod-fixed': 'resumen diario mundial GSOD (NOAA)',
  'record.format.gsod-table': 'resumen diario mundial GSOD (NOAA), una tabla',
  'record.format.nasa-power-table': 'NASA POWER, una tabla',
  'record.format.nasa-power-json': 'NASA POWER, JSON',
  'record.format.open-meteo-table': 'Open-Meteo, una tabla',
  'record.format.open-meteo-json': 'Open-Meteo, JSON',
  'record.format.epw': 'EPW, las horas de un año',
  'record.format.tmy3': 'TMY3, las horas de un año típico',
  'record.format.dwd-daily': 'valores diarios del servicio meteorológico alemán (DWD)',
  'record.format.environment-canada-daily': 'datos diarios del servicio meteorológico canadiense (ECCC)',
  'record.format.bom-daily': 'datos diarios del servicio meteorológico australiano (BoM)',
  'record.format.inmet-hourly': 'datos horarios del INMET, Brasil',

  'record.how.content': 'Los archivos se reconocen por su contenido, no por su nombre.',
  'record.how.encoding': '{file} se leyó como {encoding}.',
  'record.how.dates':
    'Las fechas de {file} se leyeron como {order, select, dmy {día, mes, año} mdy {mes, día, año} other {año, mes, día}}; --dates lo cambia.',
  'record.how.time':
    '{time, select, utc {Las horas de {file} están en UTC} standard {Las horas de {file} están en horario estándar} other {Los días de {file} son las fechas que trae escritas}}.',
  'record.how.offset':
    'Los días de {file} se hacen del horario estándar a {hours} h de UTC{from, select, longitude {, según su longitud} file {, como él mismo dice} place {, el del lugar} other {}}.',
  'record.how.gsod':
    'La lluvia con la señal I queda en 0, como la escribe el servicio; puede que no se midiera.',
  'record.how.readings':
    'Un día hecho de lecturas necesita cinco de cada seis; la lluvia que lleva una hora cayó antes de ella.',
  'record.how.gaps':
    'Lo que falta aquí sigue faltando. Donde se prueba una temporada con el registro, se rellena con el clima del lugar.',
  'record.how.typical':
    'Los años típicos sirven para proyectar edificios; aquí las temporadas se prueban en años reales o inventados.',
  'record.how.correct': 'Lo que se tomó mal se corrige con --column, --dates y --utc-offset.',

  'record.left-out':
    '{file}: {count, plural, one {# valor se dejó fuera o es dudoso} other {# valores se dejaron fuera o son dudosos}}; `neckfall weather` los nombra.',
  'record.other-stations':
    '{file} contiene además {count, plural, one {otra estación, que se dejó fuera} other {otras # estaciones, que se dejaron fuera}}: {names}.',
  'record.overlap':
    '{file} da otros valores que los archivos anteriores en {differing, number} de {days, plural, one {# día} other {# días}} que tienen ambos; se tomaron los suyos.',
  'record.far-apart': '{file} es de otra estación que {first}. ¿Son un mismo registro?',

  'error.weather-typical':
    '{value} es un año típico, meses de años distintos puestos juntos: no es un tiempo que haya hecho. Da el registro de una estación.',
  'error.missing-argument': '{command} necesita {expected}. Por ejemplo: {example}',
  'error.weather-damaged': '{value} está comprimido y dañado: no se puede descomprimir. Descárgalo otra vez.',
  'error.weather-too-many-files':
    '{value} contiene demasiados archivos. Descomprímelo y nombra los del registro.',
  'error.weather-no-text':
    '{value} no es texto. Se esperaba un archivo del tiempo, como un CSV, también .gz o .zip.',
  'error.column-form':
    '--column {value}: se esperaba NOMBRE=QUÉ o NOMBRE=QUÉ:UNIDAD, por ejemplo "Out=tempMaxC:°F"; NOMBRE=none deja fuera una columna.',
  'error.out-is-file':
    '--out {value} es uno de los archivos que se leen, y se perdería. Nombra otro archivo.',
} as const;
