/** La página Cuándo. */
export const appWhen = {
  'app.when.now.always':
    '{place}: hoy, {date}, estás a tiempo para las cebollas {crop}, como en casi todas las semanas del año.',
  'app.when.now.open': '{place}: hoy, {date}, estás a tiempo para las cebollas {crop}, hasta el {until}.',
  'app.when.now.last':
    '{place}: hoy, {date}, estás a tiempo para las cebollas {crop}, pero solo esta semana.',
  'app.when.now.late':
    '{place}: hoy, {date}, es demasiado tarde para las cebollas {crop}; otra vez a partir del {from}.',
  'app.when.now.early':
    '{place}: hoy, {date}, es demasiado pronto para las cebollas {crop}; empieza a partir del {from}.',
  'app.when.now.never': '{place}: para las cebollas {crop} no se puede contar con ninguna semana del año.',
  'app.when.ways.always': 'A tiempo en casi todas las semanas del año: {starts}.',
  'app.when.ways.open': 'Todavía a tiempo hoy: {starts}.',
  'app.when.ways.last': 'A tiempo solo esta semana: {starts}.',
  'app.when.ways.late': 'Demasiado tarde para {starts}.',
  'app.when.ways.early': 'Demasiado pronto para {starts}.',
  'app.when.ways.never': 'No se puede contar con ninguna semana del año para {starts}.',
  'app.when.way.open': '{start} (hasta el {date})',
  'app.when.way.early': '{start} (a partir del {date})',
  'app.when.way.late': '{start} (otra vez a partir del {date})',
  'app.when.onion': 'Cebolla, según el sobre',
  'app.when.onion.packet': 'tu sobre',
  'app.when.onion.hint': 'Aquí se toma como cebolla {type}.',
  'app.when.start': 'Cómo la empiezas',
  'app.when.date.sown': 'Día de siembra',
  'app.when.date.planted': 'Día de plantación',
  'app.when.date.hint': 'Pasado o por venir: la temporada que sale de él está más abajo.',
  'app.when.date.bad': 'Da un día entre el {from} y el {to}.',
  'app.when.which': 'Cuál: otra cebolla, o tu sobre',
  'app.when.no-cultivar':
    '“{name}” no está en ninguna de nuestras listas. Se toma en su lugar lo que dice el sobre, o lo que va bien en el lugar. {near, select, none {} other {Nombres parecidos:}}',
  'app.when.other-crop':
    '{name} crece de bulbos que se dividen, y aquí no se puede decir cómo le va. Se toma en su lugar una cebolla de bulbo.',
  'app.when.year': 'Todas las semanas del año, probadas',
  'app.when.year.lead':
    'Cada semana del año como día para empezar. Cuanto más alta la loma, más años acaban en buenos bulbos; cuanto más hondo el valle, más años algo sale mal.',
  'app.when.year.move':
    'Arrastra la cebolla, o mueve el deslizador, a otra semana: la temporada de abajo cambia con ella.',
  'app.when.slider': 'Empezar',
  'app.when.slider.hindered': '{date}: {what}',
  'app.when.slider.value': '{date}: {what} {years}',
  'app.when.best': 'Volver a lo mejor, {date}',
  'app.when.edges': 'Si se empieza antes o después',
  'app.when.season': 'Temporada: si se empieza ese día',
  'app.when.table.year': 'El año en números',
  'app.when.table.starts': 'Las 52 semanas en números',
  'app.when.table.onions': 'Estas cebollas en números',
  'app.when.other': 'Otra cebolla, otra forma de empezar u otro día',
  'app.when.year.read': 'Cómo se leen los dibujos',
} as const;
