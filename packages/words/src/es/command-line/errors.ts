/** Negativas: cada una nombra el valor, lo que se esperaba y qué hacer. Una línea cada una. */
export const errors = {
  'error.unknown-option':
    'Opción desconocida {value}.{near, plural, =0 {} other { ¿Querías decir {nearest}?}} `neckfall {command} --help` muestra las opciones.',
  'error.unknown-command':
    'Orden desconocida "{value}".{near, plural, =0 {} other { ¿Querías decir {nearest}?}} Órdenes: {expected}.',
  'error.missing-value': '{field} necesita un valor: {field} {expected}.',
  'error.missing-command': 'Di qué orden quieres: {expected}. Por ejemplo: {example}',
  'error.extra-argument':
    'No se esperaba "{value}". Un nombre de más de una palabra va entre comillas, por ejemplo {command} "{example}".',
  'error.missing-option': 'Falta {field}: da {expected}.',
  'error.no-place': '¿Qué lugar? Nombra una población, o da un punto con --at LAT,LON.',
  'error.two-places': 'Se dieron a la vez una población ("{value}") y --at {at}; quita una cosa.',
  'error.town-unknown':
    'No hay ninguna población "{value}" en la lista de las de 1000 habitantes o más.{near, plural, =0 {} other { Lo más parecido: {nearest}.}} Para un lugar más pequeño, da --at LAT,LON.',
  'error.postcode':
    '"{value}" parece un código postal, y aquí no se conocen. Nombra la población, o da su punto con --at LAT,LON.',
  'error.town-not-in-area':
    'No hay ninguna población "{town}" en "{area}".{near, plural, =0 {} other { Lo más parecido: {nearest}.}} Para un lugar más pequeño, da --at LAT,LON.',
  'error.area-unknown':
    'No se conoce ningún país o estado "{area}", en "{value}".{near, plural, =0 {} other { ¿Querías decir {nearest}?}}',
  'error.at-form':
    '--at {value}: se esperaba LAT,LON o LAT,LON,ALT en grados y metros, por ejemplo --at 45.76,4.84,175 (con comas decimales: --at "45,76;4,84").',
  'error.latitude-range':
    '--at {value}: la latitud {latitude} está fuera de −90 a 90. La latitud va primero.',
  'error.longitude-range': '--at {value}: la longitud {longitude} está fuera de −180 a 180.',
  'error.elevation-range':
    '--at {value}: la altitud {elevation} m está fuera de −430 a 6000 m, donde se podría cultivar.',
  'error.at-sea':
    '--at {value} está en el mar; la población más cercana es {nearest}, a {distance}. Primero va la latitud y luego la longitud; sur y oeste son negativos.',
  'error.beyond-latitudes':
    '{value} queda fuera de las tierras cubiertas, que van de los 60° S a los 72° N: no hay clima con el que planear.',
  'error.beyond-nodes':
    '{value} queda fuera de las tierras cubiertas: el punto con clima más cercano está a {distance}, y el límite es {limit}. Elige un lugar más cerca de una población con registros.',
  'error.date-form': '{field} {value}: se esperaba una fecha como MM-DD o AAAA-MM-DD, por ejemplo {example}.',
  'error.full-date-form':
    '{field} {value}: se esperaba una fecha completa como AAAA-MM-DD, por ejemplo {example}.',
  'error.date-not-in-calendar':
    '{field} {value}: ese día no existe. Se esperaba un día del calendario, por ejemplo {example}.',
  'error.date-limits':
    '{field} {value} está fuera de los límites: se esperaba una fecha del {from} al {to}, o de un año que --weather abarque.',
  'error.today-limits':
    '--today {value} está fuera de los límites: se esperaba una fecha de los años 1950 a 2090.',
  'error.number':
    '{field} {value}: se esperaba un número de {min, number} a {max, number}{unit, select, none {} other { {unit}}}.',
  'error.whole-number':
    '{field} {value}: se esperaba un número entero de {min, number} a {max, number}{unit, select, none {} other { {unit}}}.',
  'error.choice':
    '{field} {value}: se esperaba {expected}.{near, plural, =0 {} other { ¿Querías decir {nearest}?}}',
  'error.contradiction': '{field} no va con {other}: {why} Quita uno de los dos.',
  'error.json-and-csv': '--json no va con --csv: un documento o una tabla, no ambos. Quita uno de los dos.',
  'error.plant-out-before-start':
    '--plant-out {value} no es posterior a la siembra del {start}: las plántulas se trasplantan después de sembrarlas.',
  'error.plant-out-too-late':
    '--plant-out {value} está a más de {limit} días de la siembra del {start}; se esperaba una fecha hasta el {latest}.',
  'error.no-table': '{field}: esta respuesta no es una tabla. Usa --json, o --csv con {expected}.',
  'error.out-folder': '{field} {value}: la carpeta {folder} no existe. Créala antes, o nombra otra.',
  'error.out-is-folder': '{field} {value} es una carpeta: se esperaba el nombre de un archivo para escribir.',
  'error.out-is-input': '{option} {value} es el archivo que lee {field}, y se perdería. Nombra otro archivo.',
  'error.out-no-reader':
    '--out {value} es una tubería que nadie ha leído en {seconds, number} segundos. Inicia antes el programa que la lee, o nombra un archivo.',
  'error.out-read-only':
    '{field} {value}: en este sitio no se puede escribir ({reason}). Nombra un archivo en una carpeta tuya.',
  'error.out-full':
    '{field} {value}: el disco está lleno. No se escribió nada; haz sitio o nombra otro lugar.',
  'error.out-failed': '{field} {value} no se pudo escribir ({reason}). No se escribió nada.',
  'error.stdout-full':
    'No se pudo imprimir la respuesta: el disco detrás de la salida está lleno ({reason}).',
  'error.stdout-failed': 'No se pudo imprimir la respuesta ({reason}).',
  'error.weather-missing':
    '{value}: no existe ese archivo. Se esperaba un archivo del tiempo, como un CSV con las columnas date, temp_min_c y temp_max_c.',
  'error.weather-unreadable': '{value} no se pudo leer ({reason}). Se esperaba un archivo que puedas leer.',
  'error.weather-too-big':
    '{value} pasa de {limit, number} MB, comprimido o no, y ningún registro es tan grande. Da una parte.',
  'error.garden-too-big':
    '{field} {value} pasa de {limit, number} MB, lo más que puede ocupar un archivo de huerto. Se esperaba un archivo de huerto (*.neckfall.json).',
  'error.garden-too-many':
    '{field} {value}: {list} tiene {count, number} entradas; un huerto tiene como mucho {most, number}. Corta el archivo en varios huertos.',
  'error.weather-refused':
    '{value}{line, select, none {} other {, línea {line}}}{column, select, none {} other {, {column}}}: "{received}", se esperaba {expected}.{more, plural, =0 {} one { Hay otro problema en el archivo.} other { Hay otros # problemas en el archivo.}} Corrige el archivo e inténtalo otra vez.',
  'error.data-missing':
    'El archivo de datos {value} falta o está dañado ({reason}). Ejecuta otra vez `npm run build`, o haz una copia nueva del repositorio.',
  'error.internal':
    'Algo salió mal dentro de Neckfall ({reason}). Por favor, comunícalo con la orden que diste; --debug muestra más.',
  'clash.plant-out-only-here': 'solo se trasplantan las plántulas de semillero.',
  'clash.lamp-hours-only-here': 'solo las plántulas en bandejas están bajo lámparas.',
  'clash.nursery-temp-only-here': 'solo las plántulas en bandejas tienen semillero.',
  'clash.set-size-only-here': 'solo los bulbillos tienen tamaño.',
  'clash.set-store-only-here': 'solo los bulbillos salen de un almacén.',
} as const;
