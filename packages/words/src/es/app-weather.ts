/** El tiempo que hizo: lo que se guarda de un lugar, los archivos leídos, un servicio preguntado. */
export const appWeather = {
  'app.weather.link': 'El tiempo que hizo',
  'app.weather.none':
    '{place}: todavía no hay tiempo guardado, así que cada temporada se inventa a partir de lo habitual.',
  'app.weather.kept':
    '{place}: está guardado el tiempo del {from} al {to}{missing, plural, =0 {} one {, menos # día} other {, menos # días}}.',
  'app.weather.lead.none':
    'Sirve el archivo de tu propia estación, o el registro de una estación cercana. Así, una temporada ya empezada se calcula con el tiempo que hizo de verdad.',
  'app.weather.lead.kept':
    'Las temporadas de tus planes aquí se calculan con él; los días sin registro se rellenan con lo habitual.',
  'app.weather.kept.fault':
    '{fault, select, constant {Todos los días del tiempo guardado aquí tienen las mismas temperaturas, así que no se midieron} other {En el tiempo guardado aquí hace calor en pleno invierno, así que viene de la otra mitad de la Tierra}}: ninguna temporada se calcula con él. Quítalo y trae un registro de este lugar.',
  'app.weather.assumed':
    'Días del {from} al {to} tal como vinieron, donde los tiene el tiempo guardado de este lugar{forecast, select, none {} other {; desde el {forecast}, según el pronóstico}}.',
  'app.weather.forecast-from':
    'Desde el {date} es un pronóstico, hasta que otra respuesta o un archivo ocupe su lugar.',
  'app.weather.against.warmer': 'Los días medidos fueron {by} más cálidos de lo habitual aquí.',
  'app.weather.against.colder': 'Los días medidos fueron {by} más fríos de lo habitual aquí.',
  'app.weather.against.same': 'Los días medidos fueron tan cálidos como es habitual aquí.',
  'app.weather.against.rain': 'En ellos llovió {rain}; lo habitual sería {usual}.',
  'app.weather.against.far':
    '¿Es una estación de otro clima, o un termómetro al sol? Guárdalo solo si vale para tu huerto.',
  'app.weather.sources': 'De dónde viene',
  'app.weather.source': '{name}, del {from} al {to}',
  'app.weather.remove': 'Quitar el tiempo de este lugar',
  'app.weather.to-season': 'Temporada',

  'app.weather.months': 'Mes a mes',
  'app.weather.month': 'Mes',
  'app.weather.month.days': 'Días medidos',
  'app.weather.month.mean': 'Media, {unit}',
  'app.weather.month.usual-mean': 'Media habitual, {unit}',
  'app.weather.month.rain': 'Lluvia, {unit}',
  'app.weather.month.usual-rain': 'Lluvia habitual, {unit}',
  'app.weather.unknown': 'sin medir',

  'picture.weather.forecast': 'pronóstico',
  'picture.weather.measured': 'medido',
  'picture.weather.usual': 'lo habitual aquí',
  'picture.weather.summary':
    'Del {from} al {to}{least, select, none {} other {, noches y días entre {least} y {most}}}{rain, select, none {} other {, {rain} de lluvia en total}}, sobre lo habitual aquí.',
  'picture.weather.summary.last': 'Está dibujado el último año del registro.',

  'app.weather.choose': 'Traer un registro',
  'app.weather.choose.label': 'Archivos de tiempo, uno o varios',
  'app.weather.choose.hint':
    'Elígelos o suéltalos aquí: una tabla de tu propia estación, por días o cada pocos minutos, o un registro tal como lo dan los servicios meteorológicos, comprimido o no. Se leen en este dispositivo y no se envían a ningún sitio.',
  'app.weather.reading': 'Leyendo {files, plural, one {{file}} other {{file} y otros, # en total}}…',
  'app.weather.reading.stop': 'Dejar de leer',
  'app.weather.fault': 'No se pudieron leer los archivos ({reason}). Aquí no ha cambiado nada.',

  'app.weather.found': 'Lo que se encontró',
  'app.weather.found.file': '{file}: {format}, del {from} al {to}, {step}.',
  'app.weather.found.typical':
    '{file}: {format}, {step}. Es un año típico, hecho de meses de varios años: no es el tiempo que hizo, así que no se guarda.',
  'app.weather.step.day': 'una fila por día',
  'app.weather.step.part': 'varias filas por día',
  'app.weather.found.holds': 'Contiene {columns}.',
  'app.weather.found.station': 'La estación es {name}.',
  'app.weather.found.away': 'Está a {distance} de tu lugar.',
  'app.weather.found.far-away':
    'Está a {distance} de tu lugar. Mira si su tiempo es el tuyo antes de guardarlo.',
  'app.weather.found.others': 'Se dejan fuera otras estaciones del archivo: {names}.',
  'app.weather.found.gaps':
    '{days, plural, one {Falta # día, que se rellena} other {Faltan # días, que se rellenan}} con lo habitual aquí: {when}.',
  'app.weather.found.gaps.none': 'No falta ningún día.',
  'app.weather.found.no-temperature': 'No contiene temperaturas; se inventan a partir de lo habitual aquí.',
  'app.weather.found.and-more': '{list} y {count, plural, one {otro más} other {# más}}',
  'app.weather.span': 'del {from} al {to}',

  'app.weather.format.own-table': 'la tabla de una estación propia',
  'app.weather.format.ghcn-daily-fixed': 'días de GHCN-Daily',
  'app.weather.format.ghcn-daily-table': 'una tabla de GHCN-Daily',
  'app.weather.format.ncei-daily-summaries': 'resúmenes diarios de NCEI',
  'app.weather.format.gsod-fixed': 'días de GSOD',
  'app.weather.format.gsod-table': 'una tabla de GSOD',
  'app.weather.format.nasa-power-table': 'una tabla de NASA POWER',
  'app.weather.format.nasa-power-json': 'NASA POWER en JSON',
  'app.weather.format.open-meteo-table': 'una tabla de Open-Meteo',
  'app.weather.format.open-meteo-json': 'Open-Meteo en JSON',
  'app.weather.format.epw': 'un archivo EPW',
  'app.weather.format.tmy3': 'un archivo TMY3',
  'app.weather.format.dwd-daily': 'días del servicio meteorológico alemán (DWD)',
  'app.weather.format.environment-canada-daily': 'días de Environment Canada',
  'app.weather.format.bom-daily': 'días del servicio meteorológico australiano (BoM)',
  'app.weather.format.inmet-hourly': 'horas del servicio meteorológico brasileño (INMET)',

  'app.weather.as.date': 'fecha',
  'app.weather.as.time': 'hora del reloj',
  'app.weather.as.year': 'año',
  'app.weather.as.month': 'mes',
  'app.weather.as.day': 'día del mes',
  'app.weather.as.hour': 'hora',
  'app.weather.as.tempMinC': 'temperatura mínima',
  'app.weather.as.tempMaxC': 'temperatura máxima',
  'app.weather.as.tempC': 'temperatura al aire libre',
  'app.weather.as.rainMm': 'lluvia desde la fila anterior',
  'app.weather.as.rainDayMm': 'lluvia del día hasta esa hora',
  'app.weather.as.rainSumMm': 'lluvia de un contador que sigue',
  'app.weather.as.solarMJ': 'sol, su energía',
  'app.weather.as.solarW': 'sol, su potencia',
  'app.weather.as.none': 'no se usa',
  'app.weather.in-unit': '{what} ({unit})',

  'app.weather.columns': 'Cómo se tomaron sus columnas',
  'app.weather.columns.of': 'Cómo se tomaron las columnas de {file}',
  'app.weather.columns.hint': '¿Está mal tomada alguna? Elige lo que es, y el archivo se lee de nuevo.',
  'app.weather.column': 'Columna',
  'app.weather.column.is': 'Tomada como',
  'app.weather.column.is-of': '{column}: tomada como',
  'app.weather.column.unit': 'Unidad',
  'app.weather.column.unit-of': '{column}: unidad',
  'app.weather.unit.guessed': 'como se dedujo',
  'app.weather.dates': 'Orden en sus fechas',
  'app.weather.dates.ymd': 'año, mes, día',
  'app.weather.dates.dmy': 'día, mes, año',
  'app.weather.dates.mdy': 'mes, día, año',
  'app.weather.offset': 'Horas de diferencia con UTC',
  'app.weather.offset.hint': 'Hora estándar del lugar, de {min} a {max}; vacío: la de su zona.',

  'app.weather.first': 'Sus primeros días',
  'app.weather.first.date': 'Día',
  'app.weather.first.low': 'Mínima, {unit}',
  'app.weather.first.high': 'Máxima, {unit}',
  'app.weather.first.rain': 'Lluvia, {unit}',
  'app.weather.first.sun': 'Sol, MJ/m²',

  'app.weather.doubts':
    '{count, plural, one {# valor dejado fuera o dudoso} other {# valores dejados fuera o dudosos}}',
  'app.weather.doubt':
    '{date}: {field} {value}, {why}; {leftOut, select, true {se deja fuera} other {se usa tal cual}}.',
  'app.weather.doubts.more': 'y {count, plural, one {otro más} other {# más}}',
  'app.weather.field.tempMinC': 'mínima',
  'app.weather.field.tempMaxC': 'máxima',
  'app.weather.field.rainMm': 'lluvia',
  'app.weather.field.solarMJ': 'sol',
  'app.weather.why.quality-flag': 'señalado por su fuente',
  'app.weather.why.out-of-range': 'más o menos de lo que da el tiempo',
  'app.weather.why.min-above-max': 'la mínima por encima de la máxima',
  'app.weather.why.outlier': 'lejos de los días de alrededor',
  'app.weather.why.accumulated': 'lluvia de varios días en uno',
  'app.weather.why.stuck': 'igual un día tras otro',
  'app.weather.doubt.sun-beyond-sky':
    '{days, plural, one {# día tiene} other {# días tienen}} más sol del que llega a la Tierra. ¿Es la energía de un día?',
  'app.weather.doubt.sun-weak':
    'Todo su sol es solo el {percent} % del que hay sobre el aire. ¿Está en otra unidad?',
  'app.weather.doubt.rain-heavy':
    '{days, plural, one {# día tiene} other {# días tienen}} más de {limit} de lluvia, hasta {most}. ¿Es la lluvia de un día?',
  'app.weather.doubt.stuck':
    'Noches y días son exactamente iguales durante {days, number} días desde el {date}. ¿Se paró el termómetro?',

  'app.weather.refused.too-big':
    '{file} pasa de {limit} MB, comprimido o no; ningún registro es tan grande. Da una parte. Aquí no ha cambiado nada.',
  'app.weather.refused.damaged':
    '{file} está dañado y no se puede descomprimir. Consíguelo de nuevo. Aquí no ha cambiado nada.',
  'app.weather.refused.too-many-files':
    '{file} contiene demasiados archivos. Descomprímelo y elige los del registro. Aquí no ha cambiado nada.',
  'app.weather.refused.no-text':
    '{file} no contiene texto, así que no es un registro del tiempo. Aquí no ha cambiado nada.',
  'app.weather.refused.unreadable': 'No se pudo leer {file} en este dispositivo. Aquí no ha cambiado nada.',
  'app.weather.refused.not-weather':
    '{file} empieza con “{received}”, que no es ningún registro conocido aquí: una tabla necesita una línea por día o por lectura, con su fecha. Aquí no ha cambiado nada.',
  'app.weather.refused.typical-beside-real':
    '{file}: un año típico y el tiempo que hizo no se pueden leer como un solo registro. Elige uno de los dos. Aquí no ha cambiado nada.',
  'app.weather.refused.no-dates':
    '{file} no tiene ninguna columna de fechas que se reconozca. Las fechas deben ser como 2027-03-31 o 31.03.2027. Aquí no ha cambiado nada.',
  'app.weather.refused.no-values':
    '{file} no tiene ninguna columna de temperatura, lluvia o sol que se reconozca. Nombra una en su cabecera. Aquí no ha cambiado nada.',
  'app.weather.refused.no-days': '{file} no contiene ningún día que se pueda usar. Aquí no ha cambiado nada.',
  'app.weather.refused.bad-date':
    '{file}, línea {line, number}: “{received}” no es una fecha. Corrígela, o quita la línea. Aquí no ha cambiado nada.',
  'app.weather.refused.too-many-columns':
    '{file} tiene más columnas de las que puede tener un registro. Quita las que no son del tiempo. Aquí no ha cambiado nada.',
  'app.weather.refused.too-many-lines':
    '{file} tiene más líneas de las que se pueden leer. Dalo por partes. Aquí no ha cambiado nada.',
  'app.weather.refused.long-cell':
    '{file}, línea {line, number}: un valor es demasiado largo para una tabla del tiempo. Aquí no ha cambiado nada.',
  'app.weather.refused.bad-json':
    '{file} no es un documento JSON completo. Consíguelo de nuevo. Aquí no ha cambiado nada.',
  'app.weather.refused.unknown-column':
    '{file} no tiene ninguna columna “{received}”. Aquí no ha cambiado nada.',
  'app.weather.refused.unit-unknown':
    '{file}: “{received}” no es una unidad de {field} conocida aquí. Elige otra. Aquí no ha cambiado nada.',
  'app.weather.impossible.constant':
    'Todos los días tienen las mismas temperaturas, así que no se midieron. No se pueden guardar.',
  'app.weather.impossible.other-hemisphere':
    'En él hace calor en pleno invierno, así que viene de la otra mitad de la Tierra. No se puede guardar aquí.',

  'app.weather.overlap.differs':
    '{days, plural, one {# día ya guardado difiere} other {# días ya guardados difieren}}{temperature, select, none {{rain, select, none {} other {, hasta {rain} de lluvia}}} other {, hasta {temperature}{rain, select, none {} other { y {rain} de lluvia}}}}. ¿Cuál vale?',
  'app.weather.overlap.keep': 'Lo que había',
  'app.weather.overlap.take': 'El registro nuevo',
  'app.weather.keep': 'Guardarlo',
  'app.weather.leave': 'Dejarlo',

  'app.weather.ask': 'Preguntar a un servicio meteorológico',
  'app.weather.ask.off': 'Esta copia de Neckfall no pregunta el tiempo a nadie; el camino son los archivos.',
  'app.weather.ask.what':
    'Se envía a {host}, cuando pulsas el botón y en ningún otro momento: el lugar redondeado a 0,1° ({latitude}, {longitude}), y nada más.',
  'app.weather.ask.do': 'Pedir los últimos tres meses y el pronóstico',
  'app.weather.ask.waiting': 'Esperando a {host}…',
  'app.weather.ask.stop': 'Dejar de esperar',
  'app.weather.ask.model':
    'La respuesta viene de modelos del tiempo, que toman toda una comarca por un solo punto, no de un termómetro en tu huerto.',
  'app.weather.asked.unreachable':
    'No se pudo llegar a {host}. Mira si tienes conexión y pregunta otra vez. Aquí no ha cambiado nada.',
  'app.weather.asked.slow':
    '{host} no dio una respuesta completa en {seconds} segundos. Pregunta más tarde. Aquí no ha cambiado nada.',
  'app.weather.asked.status':
    '{kind, select, busy {A {host} se le ha preguntado demasiado (estado {status}). Pregunta más tarde.} fault {{host} tiene un fallo (estado {status}). Pregunta más tarde.} other {{host} no acepta lo que se pidió (estado {status}). Díselo a quien lleva esta copia.}} Aquí no ha cambiado nada.',
  'app.weather.asked.redirected':
    '{host} nos mandó a otra dirección, y no la seguimos. Aquí no ha cambiado nada.',
  'app.weather.asked.too-big':
    '{host} envió más de {limit} MB, mucho más que el tiempo de un lugar. Aquí no ha cambiado nada.',
  'app.weather.asked.not-weather':
    'Lo que envió {host} no es un registro del tiempo que se pueda leer. Aquí no ha cambiado nada.',
  'app.weather.asked.other-place':
    '{host} envió el tiempo de otro lugar ({latitude}, {longitude}). Aquí no ha cambiado nada.',
  'app.weather.asked.other-units':
    '{host} envió {column} en {unit}, y se había pedido en {expected}. Aquí no ha cambiado nada.',
  'app.weather.asked.other-days':
    '{host} envió otros días que los pedidos: del {from} al {to}. Aquí no ha cambiado nada.',
} as const;
