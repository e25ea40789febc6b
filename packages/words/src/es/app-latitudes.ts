export const appLatitudes = {
  'app.latitudes.latitude': 'A qué distancia del ecuador',
  'app.latitudes.side': 'Lado del ecuador',
  'app.latitudes.north': 'al norte',
  'app.latitudes.south': 'al sur',
  'app.latitudes.stops': 'Paradas del camino',
  'app.latitudes.stop.equator': 'ecuador',
  'app.latitudes.stop.tropic': 'trópico, {degrees}°',
  'app.latitudes.stop.circle': 'círculo polar, {degrees}°',
  'app.latitudes.stop.degrees': '{degrees}°',
  'app.latitudes.warmth': 'Calor',
  'app.latitudes.warmth.value': '{warmth}: la media del año es de {mean}, la noche más fría de {night}',
  'app.latitudes.usual': 'Lo habitual aquí',
  'app.latitudes.sown': 'Día de siembra',
  'app.latitudes.earlier': 'Tres semanas antes',
  'app.latitudes.later': 'Tres semanas después',
  'app.latitudes.kind': 'Cebolla que se sigue',
  'app.latitudes.keys':
    'Las flechas mueven un control un paso, Re Pág y Av Pág más, Inicio y Fin hasta los extremos.',
  'app.latitudes.misread':
    'El enlace dice {value}, que no es {what, select, latitude {una latitud de −70 a 70 en grados enteros} warmth {un calor de −8 a 8 °C} other {un tipo de cebolla}}: la página muestra lo habitual.',
  'app.latitudes.year': 'Los días del año, y qué pide de ellos cada tipo',
  'app.latitudes.bulbs': 'Los cinco tipos, sembrados ese día',
  'app.latitudes.bulbs.table': 'Los cinco tipos cortados, en números',
  'app.latitudes.line': 'Qué va mejor por el camino, cada tipo sembrado en su mejor día',
  'app.latitudes.line.working': 'La línea se está calculando: {known} de {all} grados hasta ahora.',
  'app.latitudes.zone': 'Por qué una misma zona de rusticidad tiene tipos opuestos',
  'app.latitudes.zone.go': 'Situarse a {place}',
  'app.latitudes.zone.table': 'La noche más fría fija en {night} mientras cambia la latitud',
  'app.latitudes.zone.warmth': 'Frente a lo habitual allí',
  'app.latitudes.zone.longest': 'Día más largo',
  'app.latitudes.zone.none': 'Aquí no hubo dos latitudes con una misma noche más fría y tipos opuestos.',
  'app.latitudes.zone.bulbs': 'A {place}, todas sembradas el {date}',
  'app.latitudes.how.place':
    'Estos lugares son inventados: no se trata de ningún pueblo, y ninguno es tan parejo. El sol es el de la latitud, al minuto. El clima es la media de nuestros puntos de clima por debajo de {height} de altura a menos de 5° de la latitud, a ambos lados del ecuador (los meses del sur girados medio año), con el calentamiento desde aquellos registros y el calor que usted pone.',
  'app.latitudes.how.sown':
    'Todas las cebollas se siembran de asiento en un bancal abierto de tierra franca, regado, a {density}. Los cinco tipos son los de los sobres; lo que cada uno pide del día está ajustado a registros de campo y cambia un poco con la latitud, pues las variedades se crían donde se venden.',
  'app.latitudes.how.line':
    'Qué tipo va mejor se juzga como en la página Dónde: primero buenos bulbos en la mayoría de los años, luego tamaño, conservación, tallos florales, tiempo en el bancal y si las tiendas de allí lo tienen.',
  'app.latitudes.take.way': 'del ecuador a {place}, {warmth}, lugares inventados',
  'app.latitudes.take.where': '{place}, {warmth}, un lugar inventado',
  'app.latitudes.real': 'Para un lugar real, pregunte en Dónde',

  'latitude.at':
    '{side, select, north {{degrees}° norte} south {{degrees}° sur} other {cero grados, en el ecuador}}',
  'latitude.needs': '{type} {hours}',
  'latitude.headline.good':
    'A {place}, sembrando de asiento el {date}, van mejor las cebollas {type}: {what}, de {across} de ancho.',
  'latitude.headline.none':
    'A {place}, sembrando de asiento el {date}, ningún tipo de cebolla da buenos bulbos en la mayoría de los años; las cebollas {type} se acercan más, con esto: {what}.',
  'latitude.day': 'A {place} el día más largo tiene {longest} de sol y el más corto {shortest}.',
  'latitude.day.alike': 'A {place} el sol está fuera unas {longest} todos los días del año.',
  'latitude.day.no-night':
    'A {place} el sol no se pone durante {up, plural, one {# día} other {# días}} de verano, y el día más corto tiene {shortest}.',
  'latitude.day.polar':
    'A {place} el sol no se pone durante {up, plural, one {# día} other {# días}} de verano, y no sale durante {down, plural, one {# día} other {# días}} de invierno.',
  'latitude.kind': '{lead}; sembradas el {date}, {end}.',
  'latitude.kind.span':
    'Los bulbos de las cebollas {type} empiezan cuando hay {hours} de sol, aquí del {from} al {to}',
  'latitude.kind.always':
    'Los bulbos de las cebollas {type} empiezan cuando hay {hours} de sol, y aquí todos los días son así de largos',
  'latitude.kind.never':
    'Los bulbos de las cebollas {type} empiezan cuando hay {hours} de sol, y aquí ningún día es así de largo',
  'latitude.end.good':
    'tienen {leaves, plural, one {# hoja} other {# hojas}} cuando empiezan los bulbos el {date}, y las hojas caen el {tops}',
  'latitude.end.small':
    'tienen {leaves, plural, one {# hoja} other {# hojas}} cuando empiezan los bulbos el {date}, pocas para algo más que un bulbo pequeño, y las hojas caen el {tops}',
  'latitude.end.not-ripe':
    'tienen {leaves, plural, one {# hoja} other {# hojas}} cuando empiezan los bulbos el {date}, y siguen con el cuello grueso cuando acaba la temporada',
  'latitude.end.no-bulb': 'echan hojas y ningún bulbo',
  'latitude.end.bolts': 'pasan un invierno demasiado grandes y suben a flor',
  'latitude.end.winter-killed': 'se pierden en invierno',
  'latitude.next.rings':
    'Siembre tres semanas antes, el {date}, y cada bulbo {change, select, more {tiene {rings, plural, one {una capa más} other {# capas más}}} fewer {tiene {rings, plural, one {una capa menos} other {# capas menos}}} other {tiene las mismas capas}}{size, select, wider { y es {by} más ancho} narrower { y es {by} más estrecho} other {, y no es más ancho}}.',
  'latitude.next.same': 'Siembre tres semanas antes, el {date}, y nada se gana: los bulbos son los mismos.',
  'latitude.next.cold':
    'Siembre tres semanas antes, el {date}, y nada se gana: la semilla espera en la tierra fría y nace con la sembrada después.',
  'latitude.next.then': 'Siembre tres semanas antes, el {date}, y el resultado es este: {what}.',
  'latitude.next.other':
    'Sembrar antes no lo arregla, es el tipo equivocado para estos días: las cebollas {type} sembradas el mismo día dan {what}, de {across} de ancho.',
  'latitude.next.nothing':
    'Sembradas tres semanas antes, el {date}, tampoco hacen bulbo, y ningún otro tipo va bien desde ese día: mueva el día de siembra o el calor.',
  'latitude.days.always': 'todo el año',
  'latitude.days.never': 'nunca',
  'latitude.days.span': '{from} a {to}',
  'latitude.warmth.usual': 'tan cálido como de costumbre',
  'latitude.warmth.warmer': '{by} más cálido que de costumbre',
  'latitude.warmth.colder': '{by} más frío que de costumbre',
  'latitude.zone.same':
    'Tome dos lugares donde la noche más fría de un invierno habitual es de {night}, {one} y {other}: están en una misma zona de rusticidad.',
  'latitude.zone.place':
    'A {place} el día más largo tiene {longest}: las cebollas {type} sembradas el {date} llegan a {across} de ancho. Allí las cebollas {stranger} sembradas el mismo día dan esto: {what}.',
  'latitude.zone.words':
    'La zona habla del frío del invierno; la cebolla pregunta por el día. Un lugar es de las cebollas {one} y el otro de las cebollas {other}, aunque ambos tienen el mismo número en un mapa de zonas.',

  'picture.latitude.none': 'ninguna sale bien',
  'picture.latitude.stretch': 'de {from}° a {to}°, {what}',
  'picture.latitude.tick': '{degrees}°',
  'picture.latitude.summary': 'Está a {here}. Qué va mejor desde el ecuador: {stretches}.',
  'picture.latitude.table': 'Qué va mejor en cada grado',
  'picture.latitude.column-latitude': 'Latitud',
  'picture.latitude.column-best': 'Va mejor',
  'picture.latitude.column-sown': 'Siembra',
  'picture.latitude.column-comes': 'Da',
  'picture.latitude.kinds': 'Los cinco tipos, sembrados ese día',
  'picture.latitude.column-kind': 'Tipo',
  'picture.latitude.column-needs': 'Pide de sol',
  'picture.latitude.column-long': 'Lo tiene',
  'picture.latitude.column-bulbs': 'Empieza el bulbo',
  'picture.latitude.column-tops': 'Caen las hojas',
} as const;
