/** Un servicio meteorológico, preguntado desde la línea de órdenes. */
export const ask = {
  'help.weather-ask':
    'pregunta a un servicio meteorológico los últimos tres meses y el pronóstico de una población, o de un punto como 52.1,-3.1; sin ella se leen archivos',
  'ask.asking': 'Se pregunta a {host} el tiempo de {latitude}, {longitude}: el lugar a 0,1°, y nada más.',
  'ask.forecast': 'Los días desde el {date} son un pronóstico.',
  'ask.model': 'Los anteriores vienen de modelos del tiempo, que toman toda una comarca por un solo punto.',
  'error.ask-and-files':
    '{value}: o se pregunta a un servicio o se leen archivos, no las dos cosas. Quita --ask o los archivos.',
  'error.ask-host':
    'NECKFALL_WEATHER_HOST={value}: se esperaba el origen de un servicio meteorológico, como https://weather.example.',
  'error.ask-unreachable': 'No se pudo llegar a {host}. Mira si tienes conexión y pregunta otra vez.',
  'error.ask-slow': '{host} no dio una respuesta completa en {seconds} segundos. Pregunta más tarde.',
  'error.ask-status':
    '{host} respondió con el estado {status}{kind, select, busy {: se le ha preguntado demasiado} fault {: un fallo suyo} other {: no acepta lo que se pidió}}. {kind, select, refused {Mira si NECKFALL_WEATHER_HOST es el que quieres.} other {Pregunta más tarde.}}',
  'error.ask-redirected': '{host} manda a otra dirección, y no se la sigue.',
  'error.ask-too-big': '{host} envió más de {limit} MB, mucho más que el tiempo de un lugar.',
  'error.ask-not-weather': 'Lo que envió {host} no es un registro del tiempo que se pueda leer.',
  'error.ask-other-place': '{host} envió el tiempo de otro lugar: {latitude}, {longitude}.',
  'error.ask-other-units': '{host} envió {column} en {unit}; se había pedido en {asked}.',
  'error.ask-other-days': '{host} envió otros días que los pedidos: del {from} al {to}.',
} as const;
