/** El marco de la aplicación: navegación, lugar, ajustes, avisos. */
export const app = {
  'app.name': 'Neckfall',
  'app.tagline': 'Qué cebolla, cuándo empezarla y qué saldrá de ella.',
  'app.skip': 'Ir a la respuesta',
  'app.nav': 'Páginas',
  'app.page.where': 'Dónde',
  'app.page.which': 'Cuál',
  'app.page.when': 'Cuándo',
  'app.page.season': 'Temporada',
  'app.page.weather': 'Tiempo',
  'app.page.about': 'Acerca de',
  'app.title': '{page}: {place} – Neckfall',
  'app.title-bare': '{page} – Neckfall',
  'app.place': 'Tu lugar',
  'app.answer.place': '{place}:',
  'app.place.own': '{name} ({label})',
  'app.place.change': 'Otro lugar',
  'app.place.keep': 'Quedarse con este lugar',
  'app.place.looking': 'Buscando el lugar…',
  'app.place.beyond-latitudes':
    'Eso queda fuera de las tierras cubiertas, que van de los 60° S a los 72° N. Allí no hay clima con el que planear; elige un lugar dentro de ellas.',
  'app.place.at-sea':
    'Ese punto está en el mar; la población más cercana es {town}, a {distance}. Primero va la latitud y luego la longitud; sur y oeste son negativos.',
  'app.place.beyond-nodes':
    'El registro de clima más cercano está a {distance}, y solo nos fiamos de uno hasta {limit}. Elige un lugar más cerca de una población.',
  'app.place.failed':
    'No llegó un archivo de la aplicación ({reason}). Mira si tienes conexión e inténtalo otra vez.',
  'app.try-again': 'Intentarlo otra vez',
  'app.town': 'Ciudad o pueblo',
  'app.town.hint':
    'Cualquier población de 1000 habitantes o más, escrita como la conozcas; el país o estado detrás del nombre distingue las que se llaman igual.',
  'app.town.none': 'Ninguna población se llama “{query}”. Revisa cómo se escribe, o da coordenadas abajo.',
  'app.town.postcode':
    '“{query}” parece un código postal, y aquí no se conocen. Escribe la población en su lugar.',
  'app.town.smaller': 'Buscando también entre poblaciones más pequeñas…',
  'app.town.offers':
    '{count, plural, =0 {Ninguna población} one {# población} other {# poblaciones}} para elegir.',
  'app.town.near': 'cerca de {town}',
  'app.coordinates': 'Coordenadas',
  'app.coordinates.hint': 'Latitud y luego longitud, en grados: 52.08, -3.13. Sur y oeste son negativos.',
  'app.coordinates.bad':
    '“{value}” no es un punto: da latitud (−90 a 90) y longitud (−180 a 180), por ejemplo 52.08, -3.13.',
  'app.coordinates.go': 'Tomar este punto',
  'app.coordinates.name': 'Cómo lo llamas (si quieres)',
  'app.locate': 'Usar el sitio donde estoy',
  'app.locate.hint': 'Tu navegador te preguntará antes. El punto no sale de este dispositivo.',
  'app.locate.waiting': 'Esperando a tu dispositivo…',
  'app.locate.denied': 'Tu navegador no dio la posición. Nombra una población en su lugar.',
  'app.locate.failed': 'Tu dispositivo no supo decir dónde está. Nombra una población en su lugar.',
  'app.map': 'Señalar en un mapa',
  'app.map.label':
    'Mapa de las tierras. Toca un punto o haz clic en él; con el teclado, mueve la cruz con las flechas y tómala con Intro, o escribe coordenadas arriba.',
  'app.map.closer': 'Más cerca',
  'app.map.wider': 'Más lejos',
  'app.map.take': 'Tomar {point}',
  'app.map.loading': 'Dibujando las tierras…',
  'app.other-ways': '¿Ninguna población cerca? Otras maneras de decir dónde',
  'app.language': 'Idioma',
  'app.units': 'Unidades',
  'app.units.metric': '°C, mm, gramos',
  'app.units.us': '°F, pulgadas, onzas',
  'app.theme': 'Aspecto',
  'app.theme.system': 'el del dispositivo',
  'app.theme.light': 'claro',
  'app.theme.dark': 'oscuro',
  'app.cannot-keep':
    'Este navegador no nos guarda nada, así que tu lugar está solo en la dirección de esta página. Guarda el enlace.',
  'app.share': 'Copiar un enlace a esto',
  'app.share.done':
    'Copiado. Quien lo abra verá este lugar y este plan; el lugar no se envía a ningún servidor.',
  'app.share.by-hand': 'Copia este enlace a mano:',
  'app.misread':
    'El enlace decía {key}: “{value}”, y se esperaba {expects, select, number {un número dentro de sus límites} day {un día, por ejemplo 2027-03-25} point {latitud,longitud} text {un texto más corto} other {otra palabra}}. No se tiene en cuenta.',
  'app.other-today': 'Calculado como si hoy fuera {date}, según dice el enlace.',
  'app.real-today': 'Usar el día de hoy',
  'app.update': 'Hay una versión nueva lista. Si esperas, no se pierde nada de lo que has escrito.',
  'app.update.now': 'Usarla ya',
  'app.update.elsewhere':
    'En otra pestaña se puso una versión nueva. Esta página sigue como está hasta que la vuelvas a cargar.',
  'app.about.link': 'Acerca de Neckfall: privacidad, límites, fuentes',
  'app.offline-ready': 'Lista para funcionar sin conexión.',
  'app.working': 'Calculando…',
  'app.fault':
    'Algo salió mal por nuestra parte ({reason}). Vuelve a cargar la página; si sigue igual, mándanos el enlace.',
  'app.how': 'Cómo lo sabemos',
  'app.how.sources': 'Fuentes: {sources}.',
  'app.source.model': 'nuestro propio modelo del cultivo',
  'app.how.more': 'Todas las fuentes, licencias y límites',
  'app.how.hollow':
    'Una hondonada helada: las noches se toman {colder} más frías que en el terreno abierto de alrededor.',
  'app.cautions': 'Ten cuidado',
  'app.table': 'Lo mismo en números',
} as const;
