/** La línea de órdenes se explica. */
export const help = {
  'help.program':
    'Planea un cultivo de cebolla para cualquier lugar de tierra firme: qué cebolla le va, cuándo y cómo empezar, y cómo será la temporada.',
  'help.where': 'Qué cebolla comprar aquí, cuándo empezarla y para qué se está a tiempo hoy.',
  'help.season':
    'Qué dará un cultivo: cuándo brota, cuándo empiezan los bulbos, cuándo se tumban las hojas y lo grandes que se hacen los bulbos.',
  'help.when': 'El año probado semana a semana: cuándo hay que empezar para acabar con buenos bulbos.',
  'help.title.usage': 'Uso:',
  'help.title.arguments': 'Argumentos:',
  'help.title.options': 'Opciones:',
  'help.title.commands': 'Órdenes:',
  'help.example': 'Por ejemplo:',
  'help.about': 'en qué se apoya Neckfall: fuentes y licencias',
  'help.version': 'la versión',
  'help.help': 'esta ayuda',
  'help.place': 'una población de 1000 habitantes o más, por ejemplo Lyon o "Springfield MO"',
  'help.at': 'un punto en su lugar: grados, y metros sobre el mar, por ejemplo 45.76,4.84,175',
  'help.today': 'qué día es, como AAAA-MM-DD (si no: la fecha de esta máquina)',
  'help.sun': 'horas de sol directo en el bancal a mitad del verano (si no: terreno abierto)',
  'help.warmer': 'cuánto más cálido que el clima registrado (si no: véase Cómo lo sabemos)',
  'help.weather':
    'días medidos en lugar de inventados: un archivo de los que lee `neckfall weather`, como un CSV con date, temp_min_c, temp_max_c y, si los hay, rain_mm y solar_mj_m2; puede repetirse con más archivos',
  'help.years': 'cuántos años de tiempo probar, de 1 a 200 (si no: 30)',
  'help.seed': 'otra serie de años de tiempo (si no: 1)',
  'help.json': 'un documento JSON, en unidades métricas',
  'help.csv': 'una tabla de valores separados por comas, en unidades métricas',
  'help.out': 'escribir en un archivo en lugar de imprimir',
  'help.units': 'unidades: métricas o de EE. UU. (si no: metric)',
  'help.lang': 'idioma de las palabras (si no: el de esta máquina, si aquí se habla)',
  'help.debug': 'mostrar dónde surgió un error',
  'help.start':
    'direct-seed (siembra directa), raised-seedlings (semillero), bought-transplants (plántulas compradas) o sets (bulbillos)',
  'help.class': 'short (día corto), intermediate (día intermedio) o long (día largo), según el sobre',
  'help.date':
    'siembra, o plantación de plántulas compradas y bulbillos: MM-DD es el próximo día así, o AAAA-MM-DD',
  'help.plant-out':
    'cuándo se trasplantan las plántulas de semillero (si no: con 2,5 hojas o tras 12 semanas, y con el bancal a 7 °C)',
  'help.nursery-temp':
    'temperatura de las bandejas de plántulas (si no: 15 en interior, o un semillero al aire libre donde hace calor al sembrar)',
  'help.lamp-hours': 'horas de lámparas sobre las bandejas (si no: solo luz natural)',
  'help.density': 'plantas por m², de 5 a 400 (si no: 40)',
  'help.set-size': 'ancho de un bulbillo, en mm, de {min} a {max} (si no: 16)',
  'help.set-store': 'cómo se guardaron los bulbillos en invierno: en frío o en calor (si no: cold)',
  'help.cover':
    'sobre el bancal las seis primeras semanas y con heladas: nada, manta térmica o túnel (si no: none)',
  'help.water': 'con riego cuando hace falta, o solo con la lluvia (si no: watered)',
  'help.soil': 'por ejemplo sand (arena), loam (franco) o clay (arcilla) (si no: loam)',
  'help.days': 'añadir la temporada día a día',
} as const;
