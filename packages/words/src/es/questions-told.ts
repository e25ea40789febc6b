/** Con qué se responden las diez preguntas. */
export const questionsTold = {
  'question.never.stranger':
    '{place}: lo más probable es que fuera una cebolla de otra latitud. {kind}: aquí no forma bulbo {years}.',
  'question.never.waits':
    'Empieza a formar bulbo solo con días de bastante más de {needed}, y su día más largo tiene {longest}: ni abono ni siembra temprana lo remedian.',
  'question.never.late':
    '{place}: lo más probable es que se sembrara tarde. La semilla de cebolla {kind} sembrada hacia el {date}, o más tarde en el verano, {end, select, winter {no llega a bulbo maduro antes de que se la lleve el invierno,} other {no forma bulbo ese año}} {years}.',
  'question.never.late-too':
    'También falla la siembra tardía: la semilla de cebolla {kind} sembrada hacia el {date}, o más tarde en el verano, {end, select, winter {no llega a bulbo maduro antes de que se la lleve el invierno,} other {no forma bulbo ese año}} {years}.',
  'question.never.place':
    '{place}: lo más probable es que fuera el lugar. Casi ninguna cebolla de bulbo va bien aquí en terreno abierto, se empiece cuando se empiece.',
  'question.never.place-best': 'Lo mejor de todo lo probado: {crop}. Buenos bulbos {years}.',
  'question.never.place-instead': 'Cultive {instead} en su lugar.',
  'question.never.shade':
    '{place}: aquí cada clase forma bulbos en cualquier fecha en que se siembra; lo más probable es que fuera la sombra, o semilla de clase desconocida.',
  'question.never.young':
    'La planta ha de tener edad y los días han de ser largos al mismo tiempo; lo que se siembra tarde encuentra días que menguan.',
  'question.never.own': 'Lo que va bien: {crop}. Buenos bulbos {years}, de unos {size}.',
  'question.never.look': 'La sombra densa y mucho nitrógeno tardío también las dejan verdes.',

  'question.late.head':
    '{place}: {still, select, yes {no, aún no} never {no depende de la fecha} other {sí, por ahora}}. {today}',
  'question.late.now': 'Si se empieza ahora o pronto, {crop}: salen bien {years}, maduras hacia el {ripe}.',
  'question.late.best': 'Lo mejor del año: {crop}. Buenos bulbos {years}.',

  'question.small.head':
    '{place}: de los fallos de siempre, lo que más cuesta aquí es {cause}: bulbos de {small} en vez de {own}.',
  'question.small.poor': '{place}: aquí se quedan pequeñas se haga lo que se haga, de unos {own}.',
  'question.small.none':
    '{place}: ninguno de los fallos de siempre las hace aquí mucho menores de {own}; busque hambre, malas hierbas o raíces enfermas.',
  'question.small.cause.late': 'empezar {weeks} semanas tarde',
  'question.small.cause.crowded': 'apretarlas a {density}',
  'question.small.cause.unwatered': 'dejar el bancal a la lluvia',
  'question.small.cause.shaded': 'la sombra, con {hours} horas de sol',
  'question.small.cause.other-kind': 'cultivar cebollas {kind}',
  'question.small.worse': 'Lo que las deja aún menores: {others}.',
  'question.small.item': '{cause} ({size})',
  'question.small.others': 'Después {count, plural, one {viene} other {vienen}} {others}.',
  'question.small.own': 'Con todo bien hecho: {crop}. Unos {size}, buenos bulbos {years}.',
  'question.small.leaves':
    'El bulbo crece de las hojas que hay cuando empieza, {leaves, plural, one {cerca de # hoja} other {cerca de # hojas}} si todo va bien: lo que antes cuesta hojas cuesta tamaño.',

  'question.sets.head':
    '{place}: lo más probable es que sean grandes. De bulbillos de {large} guardados en frío florecen: {many}; de los de {small}: {few}.',
  'question.sets.seldom':
    '{place}: aquí rara vez florecen ni los grandes: de los de {large} guardados en frío, {many}; de los de {small}, {few}.',
  'question.sets.warm':
    'De los grandes guardados en una habitación templada hasta plantarlos florecen: {some}.',
  'question.sets.why':
    'La cebolla florece en su segundo año, y un bulbillo grande que ha pasado frío toma ese frío por su invierno; uno pequeño es aún demasiado joven para eso.',
  'question.sets.undone': 'Los días cálidos tras plantar deshacen lo que hizo el frío del almacén.',
  'question.sets.do':
    'Compre bulbillos de no más de {small}. Plante aparte los mayores y arránquelos verdes, y coma primero lo que floreció.',
  'question.sets.when': 'Calculado para {crop}.',

  'question.kitchen.head':
    '{place}: para bulbos, no. De las cebollas de cocina que se plantan florecen: {many}. Deje que broten y corte lo verde.',
  'question.kitchen.why':
    'Para la planta, una cebolla de cocina es un bulbillo muy grande que ya tuvo su invierno. Incluso de {size}, menor que las que se compran, florecen {cold} tras un almacén frío y {warm} tras uno templado; de bulbillos de {small}, {few}.',
  'question.kitchen.limit':
    'No hay detrás ningún ensayo con cebollas de cocina: se probaron bulbillos de hasta unos {tried}, y los mayores florecieron más.',
  'question.kitchen.green': 'Plantada hacia el {date}, lo verde asoma en unos {days} días.',
  'question.kitchen.seed':
    'La semilla de una que florece es de una clase que nadie conoce, y la de un híbrido sale mezclada.',
  'question.kitchen.caution.rot':
    'Las cebollas de cocina pueden traer podredumbre blanca, que queda en la tierra veinte años y más: nunca las plante en tierra limpia. Use una maceta y tire su tierra a la basura.',
  'question.kitchen.caution.soft': 'No plante ni coma ninguna blanda, mojada o mohosa: tírela entera.',
  'question.kitchen.caution.treated': 'Algunas están tratadas para que no broten; deje las que no se mueven.',

  'question.abroad.head': '{place}: {kinds}.',
  'question.abroad.both':
    '{ending, select, good {las cebollas de los trópicos y las del lejano norte irán bien aquí} gamble {las cebollas de los trópicos y las del lejano norte son aquí una apuesta} small {las cebollas de los trópicos y las del lejano norte se quedan aquí pequeñas} bare {ni las cebollas de los trópicos ni las del lejano norte forman bulbo aquí} other {las cebollas de los trópicos y las del lejano norte van mal aquí}}: de las primeras, buenos bulbos {tropics}; de las segundas, {north}',
  'question.abroad.good':
    '{from, select, tropics {una cebolla de los trópicos} other {una cebolla del lejano norte}} irá bien aquí (buenos bulbos {years})',
  'question.abroad.gamble':
    '{from, select, tropics {una cebolla de los trópicos} other {una cebolla del lejano norte}} es aquí una apuesta (buenos bulbos {years})',
  'question.abroad.small':
    '{from, select, tropics {una cebolla de los trópicos} other {una cebolla del lejano norte}} se queda aquí pequeña (unos {size}, buenos bulbos {years})',
  'question.abroad.no-bulb':
    '{from, select, tropics {una cebolla de los trópicos} other {una cebolla del lejano norte}} no forma bulbo aquí {bare}',
  'question.abroad.poor':
    '{from, select, tropics {una cebolla de los trópicos} other {una cebolla del lejano norte}} va mal aquí (buenos bulbos {years})',
  'question.abroad.early':
    'Las cebollas de los trópicos empiezan el bulbo cuando los días pasan de unos {needed}: aquí eso llega con plantas aún jóvenes.',
  'question.abroad.early-enough':
    'Las cebollas de los trópicos empiezan el bulbo cuando los días pasan de unos {needed}; empezadas hacia el {date} tienen ya hojas bastantes.',
  'question.abroad.waits':
    'Las cebollas del lejano norte empiezan el bulbo solo con días de bastante más de {needed}; su día más largo tiene {longest}.',
  'question.abroad.own': 'La cebolla de aquí: {crop}. Unos {size}, buenos bulbos {years}.',
  'question.abroad.ask':
    'Pregunte a su amigo cuánto dura allí el día a mediados de verano, o qué dice el sobre, y búsquelo en «Cuál».',
  'question.abroad.caution':
    'Semillas, bulbillos y bulbos no pueden cruzar muchas fronteras sin papeles, y los bulbos traen enfermedades: pregunte a su servicio de sanidad vegetal antes de que le envíen nada.',

  'question.autumn.yes':
    '{place}: sí. Siembre semilla {kind} en el bancal hacia el {date}: buenos bulbos {years}, maduros hacia el {ripe}.',
  'question.autumn.tropics':
    '{place}: aquí no hay invierno que preceder. Sembrada en el bancal, la semilla {kind} va mejor hacia el {date}: buenos bulbos {years}.',
  'question.autumn.winter':
    '{place}: mejor no. Hasta en la mejor siembra, hacia el {date}, la helada se lleva la cosecha {killed}.',
  'question.autumn.no':
    '{place}: mejor no. {kind}, sembrada hacia el {date}, da buenos bulbos {years}; sembrada hacia el {spring}, {springYears}.',
  'question.autumn.sooner':
    'Es {weeks, plural, one {# semana} other {# semanas}} antes que lo sembrado hacia el {spring}, que sale bien {springYears}.',
  'question.autumn.same':
    'Maduran más o menos con lo sembrado hacia el {spring}, que sale bien {springYears}.',
  'question.autumn.spring': 'Lo sembrado hacia el {spring} sale bien {springYears}, de unos {springSize}.',
  'question.autumn.frost': 'La helada se lleva {middle} en un invierno medio, {hard} en uno duro.',
  'question.autumn.fleece': 'Bajo manta térmica salen buenos bulbos {years}.',
  'question.autumn.flower':
    'No siembre semanas antes: las plantas gruesas como un lápiz cuando llega el frío florecen al año siguiente. De estas: {some}.',

  'question.indoors.head':
    '{place}: desde hacia el {first}, y mejor hacia el {best}. {way, select, bigger {Sembrar temprano sí da bulbos mayores} other {Sembrar antes no da bulbos mayores}}: {firstSize} con la primera siembra, {bestSize} con la mejor.',
  'question.indoors.any':
    '{place}: en cualquier época del año, y mejor hacia el {best}, para bulbos de unos {bestSize}: sus días apenas cambian.',
  'question.indoors.none':
    '{place}: ninguna siembra de semilla {kind} en bandejas sale bien lo bastante a menudo aquí; compre plantones o bulbillos.',
  'question.indoors.odds':
    'Buenos bulbos salen {firstYears} con la primera siembra, {bestYears} con la mejor.',
  'question.indoors.odds-same':
    'Buenos bulbos salen {bestYears}, con la primera siembra igual que con la mejor.',
  'question.indoors.last':
    'Hasta hacia el {last} se llega a tiempo, para bulbos de unos {lastSize}, buenos {lastYears}.',
  'question.indoors.bed': 'Sembradas en el bancal hacia el {date} llegan a {size}, buenas {years}.',
  'question.indoors.flower':
    'De las sembradas primero florecen: {some}; son grandes cuando les llega el frío.',
  'question.indoors.light':
    'Las bandejas que esperan meses necesitan lámparas, o las plantas crecen endebles; esperan al bancal, no a usted.',

  'question.many.head': '{place}: para {people, plural, one {una persona} other {# personas}}, {answer}',
  'question.many.use': '{week} por semana, de: {store}.',
  'question.many.caution':
    'No todas se conservan igual: coma primero las de cuello grueso, golpeadas y dobles, y repase las demás cada mes.',

  'question.table': 'De dónde se leyó la respuesta',
  'question.column.what': 'Qué',
  'question.column.start': 'Comienzo',
  'question.column.good': 'Buenos bulbos',
  'question.column.size': 'Diámetro',
  'question.column.flower': 'Florecen',
  'question.column.ripe': 'Maduras',
  'question.column.plants': 'Plantas',
  'question.column.last': 'Duran hasta',
  'question.row.start': '{kind}, {start}, {date}',
  'question.role.own': 'La cebolla de aquí',
  'question.role.stranger': 'Clase de otro lugar',
  'question.role.late-start': 'Sembrada tarde',
  'question.role.short': 'De día corto',
  'question.role.intermediate': 'De día intermedio',
  'question.role.long': 'De día largo',
  'question.role.late': 'Empezada tarde',
  'question.role.crowded': 'Apretada',
  'question.role.unwatered': 'Solo lluvia',
  'question.role.shaded': 'A la sombra',
  'question.role.other-kind': 'Otra clase',
  'question.role.small-sets': 'Bulbillos pequeños, en frío',
  'question.role.large-sets': 'Bulbillos grandes, en frío',
  'question.role.warm-sets': 'Bulbillos grandes, templados',
  'question.role.kitchen-bulb': 'Cebolla de cocina, en frío',
  'question.role.warm-bulb': 'Cebolla de cocina, templada',
  'question.role.shop-set': 'Bulbillo de tienda',
  'question.role.from-tropics': 'De los trópicos',
  'question.role.from-north': 'Del lejano norte',
  'question.role.autumn': 'Sembrada en otoño',
  'question.role.autumn-fleece': 'Lo mismo bajo manta',
  'question.role.spring': 'Sembrada en otra época',
  'question.role.trays-first': 'En bandejas, primera',
  'question.role.trays-best': 'En bandejas, mejor',
  'question.role.trays-last': 'En bandejas, última',
  'question.role.bed': 'En el bancal',
  'question.role.lot': 'Lote',
} as const;
