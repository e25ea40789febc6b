/** La página Por qué: lo que se vio, lo que puede haber detrás, una pregunta cada vez y el año que viene. */
export const appWhy = {
  'app.why.title': '¿Qué salió mal?',
  'app.why.lead': 'Pulsa lo que viste y mira luego por qué. Con una cosa basta.',
  'app.why.search': 'Búscalo con tus palabras',
  'app.why.search.hint': 'no hizo bulbo, cuellos mohosos …',
  'app.why.search.found':
    '{count, plural, =0 {Nada de aquí se llama «{query}». Mira todo lo que puede verse.} one {Puede ser una cosa.} other {Pueden ser # cosas, la más probable primero.}}',
  'app.why.search.like': 'Lo que puede ser «{query}»',
  'app.why.time.growing': 'Mientras crecía',
  'app.why.time.lifting': 'Al cosechar',
  'app.why.time.store': 'En el almacén',
  'app.why.most': 'No se pueden sopesar más de {most} cosas a la vez. Quita antes una.',
  'app.why.chosen': '{count, plural, =0 {Aún nada pulsado} one {Una cosa} other {# cosas}}',
  'app.why.see': 'Ver por qué',
  'app.why.saw': 'Lo que viste',
  'app.why.saw.change': 'Cambiar lo que viste',

  'app.why.crop.chosen':
    'No habías dicho cómo la cultivaste, así que es lo que casi todos habrían cultivado aquí. Cuanto más se parezca a la tuya, más cierta la respuesta.',
  'app.why.crop.which': 'Qué cultivo',
  'app.why.crop.free': 'uno que no está guardado aquí',
  'app.why.crop.learns': 'Lo que anotaste de él, y el tiempo guardado aquí, cuentan en la respuesta.',
  'app.why.about': 'Los días son aproximados, no seguros',
  'app.why.noticed': 'Cuándo lo viste en el almacén',
  'app.why.noticed.unsaid': 'no lo sé',

  'app.why.rescue': 'Lo que aún puede hacerse',
  'app.why.causes': 'Lo que puede haber detrás',
  'app.why.for': 'Lo que habla a favor',
  'app.why.against': 'Lo que habla en contra',
  'app.why.look': 'Para estar seguro',
  'app.why.advice': 'La próxima vez',
  'app.why.what-if': 'Con ello y sin ello',
  'app.why.with': 'con ello',
  'app.why.without': 'sin ello',
  'app.why.more': 'Por qué puede ser esto',
  'app.why.more-of': 'Por qué puede ser esto: {cause}',
  'app.why.picture': 'Cortadas, a la misma escala: con ello {with}; sin ello {without}.',
  'app.why.picture.store': 'De diez bulbos, aún sanos: con ello {with}, sin ello {without}.',
  'app.why.picture.sound': '{count} de cada 10 aún sanos',

  'app.why.ask': 'Una pregunta que diría más',
  'app.why.ask.start': '¿Cómo las empezaste?',
  'app.why.ask.class': '¿Qué decía el sobre o la bolsa?',
  'app.why.ask.left':
    '{left, plural, =0 {Es la última pregunta.} one {Después, como mucho una más.} other {Después, como mucho # más.}}',
  'app.why.ask.done': 'No queda nada que preguntar que cambie mucho.',
  'app.why.answered': 'Lo que respondiste',
  'app.why.answered.is': '{question} {answer}.',
  'app.why.take-back': 'Retirar',
  'app.why.take-back-of': 'Retirar: {question}',
  'app.why.anew': 'Sopesado de nuevo: {answer}',

  'app.why.next': 'El año que viene',
  'app.why.next.plan': 'El plan del año que viene: {onion}, {start}, {date}',
  'app.why.next.keep':
    'Guardar el plan del año que viene {holder, select, page {en esta página} other {en este dispositivo}}',
  'app.why.next.kept': 'Guardado como «{name}».',
  'app.why.next.name': '{onion}, {start}, {year}',
  'app.why.next.which': 'Qué cebollas hay',
  'app.why.next.when': 'El año semana a semana',

  'app.why.how.runs':
    'La temporada se cultivó otra vez en {years} años de tiempo, como la contaste y con cada causa puesta o quitada.',
  'app.why.how.listed':
    'Lo que ningún cálculo puede saber, como plagas, abonado y golpes, se sopesa por lo común que es y por el aspecto que da. Esas cifras son de memoria, no de recuentos.',
  'app.why.how.unsaid': 'Lo que no dijiste del bancal puede haber sido de otro modo, y así se sopesa.',
  'app.why.how.noticed': 'No se dijo cuándo se vio en el almacén: se tomaron cuatro meses desde la cosecha.',
  'app.why.how.store': 'No se dijo dónde se guardaron: se tomó {store}.',

  'app.why.link': '¿Algo salió mal? Averigua por qué',
  'app.why.link.outcome': 'Si viste esto: por qué, y qué ayudaría',
  'app.why.link.store': 'Por qué se estropearon',
} as const;
