/** El pie de cada respuesta. */
export const howWeKnow = {
  'how.title': 'Cómo lo sabemos',
  'how.climate':
    'Clima: ajustado por nosotros a los registros de estaciones meteorológicas, las temperaturas a los de 1979–2013, lo demás a los de 1961–1990; el punto con clima más cercano está a {distance}.',
  'how.years':
    'Probado en {years, plural, one {# año} other {# años}} de tiempo meteorológico inventado, sacado de ese clima (serie {seed}), cada uno con plantas algo más tempranas o más tardías que lo medio de su clase.',
  'how.past':
    'Esos años se hacen con el clima pasado: no conocen plagas, ni granizo, ni descuido, y de las enfermedades solo lo que cuestan las rachas largas de humedad.',
  'how.sure':
    'Lo menos seguro: la duración del día con la que esta clase empieza sus bulbos, que se conoce con media hora de error más o menos.',
  'how.sure-tropics':
    'Lo menos seguro: lo que cuestan aquí las rachas largas de humedad, y qué clases se venden: cerca del ecuador los días apenas cambian, así que deciden la lluvia y el calor.',
  'how.sure-mountain':
    'Lo menos seguro: el clima de esta ladera; el terreno cercano difiere en más de {spread} de altura. Da la altitud de tu propio terreno.',
  'how.span.parts':
    'En 8 de cada 10 {some, select, some {años con cosecha} other {años}}, las fechas en que se tumban las hojas no se separan más de {days}, ni los tamaños de los bulbos más de {size}. {rest, select, none {Eso lo hace por sí solo el tiempo de cada año.} other {El tiempo de cada año haría por sí solo cerca de {weatherDays} y {weatherSize}; lo demás lo hace lo que no se sabe de esta cebolla.}}',
  'how.span.lead':
    'En 8 de cada 10 {some, select, some {años con cosecha} other {años}}, las hojas del cultivo nombrado primero se tumban entre estas fechas: {dates}; y los bulbos miden {sizes}.',
  'how.span.best-start':
    'En 8 de cada 10 {some, select, some {años con cosecha} other {años}}, las hojas de lo empezado en el mejor momento se tumban entre estas fechas: {dates}; y los bulbos miden {sizes}.',
  'how.hangs.warmth':
    'De lo que más dependen las hojas aquí: de lo cálida que sea la temporada. Con {amount} {way, select, more {más} other {menos}}, {end}.',
  'how.hangs.day-length':
    'De lo que más dependen las hojas aquí: de la duración del día que necesita esta cebolla. Con {amount} {way, select, more {más} other {menos}}, {end}.',
  'how.hangs.start':
    'De lo que más dependen las hojas aquí: del día en que empiezas. Empezando {amount} {way, select, more {después} other {antes}}, {end}.',
  'how.hangs.start-too': 'Empezando {amount} después, {end}.',
  'how.minutes': '{minutes} min',
  'how.days': '{days, plural, one {# día} other {# días}}',
  'how.end.later': 'se tumban cerca de {days} después',
  'how.end.sooner': 'se tumban cerca de {days} antes',
  'how.end.same': 'se tumban más o menos el mismo día',
  'how.end.bolts': 'se espiga más de la cuarta parte de las plantas',
  'how.end.winter-killed': 'la mayoría de las plantas se pierde en invierno',
  'how.end.no-bulb': 'no se forman bulbos',
  'how.end.not-ripe': 'no se tumban a tiempo',
  'how.end.with-size': '{end}, con bulbos {size} {way, select, more {más anchos} other {más estrechos}}',
  'how.sources': 'Fuentes: {sources}. `neckfall --about` las da completas.',
  'assumed.elevation-town': 'Altitud {elevation}, tomada de {town}.',
  'assumed.elevation-near': 'Altitud {elevation}, tomada de {town}, a {distance}.',
  'assumed.elevation-node': 'Altitud {elevation}, tomada del punto con clima más cercano, a {distance}.',
  'assumed.elevation-given': 'Altitud {elevation}, la indicada.',
  'assumed.warmer': 'Se toma {warmer} más cálido que ese registro, por el calentamiento desde entonces.',
  'assumed.warmer-given':
    '{way, select, same {Se toma igual de cálido que ese registro, como se pidió.} cooler {Se toma {warmer} más frío que ese registro, como se pidió.} other {Se toma {warmer} más cálido que ese registro, como se pidió.}}',
  'assumed.district':
    'Donde clases o fechas salen igualadas, va primero lo que hacen quienes cultivan en la comarca: {sources}.',
  'assumed.type': 'Un sobre que dice “{class}” se toma aquí como cebolla {type}.',
  'assumed.type-autumn':
    'Si se empieza entre el otoño y el invierno, se toma como cebolla {type}, la clase que se vende para eso.',
  'assumed.sun': '{hours} de sol directo a mitad del verano, como se indicó.',
  'assumed.open': 'Terreno abierto: pleno sol.',
  'assumed.sizes':
    'Los tamaños son los de bancales {water, select, rain {abonados y deshierbados} other {abonados, regados y deshierbados}} como en ensayos de campo; un huerto corriente da cerca de cuatro quintas partes del peso (práctica común, sin fuente).',
  'assumed.weather': 'Días del {from} al {to} según lo medido, donde {file} los tiene.',
  'assumed.practice': '{density}, suelo: {soil}, {water}, {cover}.',
  'assumed.sets': 'Bulbillos de {size}, {store}.',
  'assumed.season-of-sets':
    'Donde los días de verano son largos, se toma que hay bulbillos sanos desde el final del verano hasta tres semanas antes del día más largo; después han brotado o se han secado (práctica común, sin fuente).',
  'assumed.season-of-plants':
    'Donde los días de verano son largos, se toma que hay plántulas a la venta desde el final del verano hasta tres semanas antes del día más largo (práctica común, sin fuente).',
  'assumed.season-of-trays':
    'Las bandejas no se siembran más de {weeks} semanas antes de que el bancal esté lo bastante cálido para las plántulas (práctica común, sin fuente).',
  'assumed.nursery':
    '{temperature, select, outdoors {Plántulas criadas en un semillero al aire libre} varies {Plántulas criadas en un semillero al aire libre donde los días están a {warm} o más en la siembra; si no, en bandejas a {indoors}} other {Bandejas a {temperature}}}, {lamps, select, none {solo con luz natural} other {con {lamps} de lámparas}}.',
  'assumed.plant-out':
    'Se trasplantan cuando las plántulas tienen {leaves} hojas o llevan {weeks} semanas, y el bancal está a {temperature}.',
  'warning.ambiguous': '"{asked}" también podría ser {others}. Se toma {taken}, la de más habitantes.',
  'warning.hilly':
    'En {reach} a la redonda el terreno difiere en más de {spread} de altura: la altitud {elevation} es una suposición. Da la tuya con --at LAT,LON,ALT.',
  'warning.weather-unused':
    '{file} no tiene ningún día de las temporadas probadas, así que no cambia nada. Da fechas de los años que abarca.',
  'warning.more-places': '{more} más',
  'source.chelsa': 'CHELSA V1.1 (Karger et al. 2017)',
  'source.cru': 'CRU CL 2.0 (New et al. 2002)',
  'source.geonames': 'GeoNames (CC BY 4.0)',
  'source.model': 'el modelo del cultivo de docs/how-it-works.md',
} as const;
