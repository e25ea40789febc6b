/** La página Temporada, y qué hacer en una semana del cultivo. */
export const appSeason = {
  'week.this': 'Esta semana: {what}',
  'week.far.direct-seed': 'Todavía no hay nada que hacer. Siembra hacia el {date}.',
  'week.far.raised-seedlings': 'Todavía no hay nada que hacer. Siembra en semillero hacia el {date}.',
  'week.far.bought-transplants': 'Todavía no hay nada que hacer. Trasplanta las plántulas hacia el {date}.',
  'week.far.sets': 'Todavía no hay nada que hacer. Planta los bulbillos hacia el {date}.',
  'week.prepare.direct-seed':
    'Consigue semilla fresca y limpia el bancal de malas hierbas. Siembra hacia el {date}.',
  'week.prepare.raised-seedlings':
    'Consigue semilla fresca y busca un sitio con luz para las bandejas. Siembra hacia el {date}.',
  'week.prepare.bought-transplants':
    'Encarga las plántulas y limpia el bancal de malas hierbas. Trasplántalas hacia el {date}.',
  'week.prepare.sets':
    'Consigue bulbillos sanos y secos y limpia el bancal de malas hierbas. Plántalos hacia el {date}.',
  'week.start.direct-seed':
    'Siembra a {depth} de profundidad en tierra húmeda, apriétala y mantenla húmeda hasta que broten.',
  'week.start.raised-seedlings':
    'Siembra en bandejas, cubre con poca tierra y mantenlas {temperature, select, outdoors {con luz} other {con luz, a unos {temperature},}} y apenas húmedas.',
  'week.start.bought-transplants':
    'Planta las plántulas a {depth} de profundidad y riégalas para asentarlas.',
  'week.start.sets': 'Planta los bulbillos con la punta apenas a la vista y aprieta la tierra.',
  'week.wait': 'Mantén húmedo el bancal y busca los primeros brotes verdes.',
  'week.tray': 'Mantén las bandejas con luz, aireadas y apenas húmedas. Se trasplantan hacia el {date}.',
  'week.harden':
    'Acostumbra las plantas al aire libre, cada día más tiempo, y trasplántalas hacia el {date}.',
  'week.winter': 'Déjalas descansar. Vuelve a apretar en la tierra las plantas que la helada haya levantado.',
  'week.grow':
    'Quita las malas hierbas mientras son pequeñas{water, select, rain {} other { y riega en las rachas secas}}. Cada hoja hecha antes de que empiecen los bulbos puede ser una capa.',
  'week.feed':
    'Quita las malas hierbas una vez más y abona por última vez. Los bulbos empiezan hacia el {date}; abonar después engrosa los cuellos.',
  'week.bulb':
    'Los bulbos se están llenando. Quita las malas hierbas a mano, no abones más{water, select, rain {} other { y mantén el bancal siempre igual de húmedo}}.',
  'week.dry':
    '{water, select, rain {Deja} other {No riegues más y deja}} que las hojas se tumben por sí solas.',
  'week.lift':
    'Cuando más de la mitad de las hojas estén tumbadas, arranca en un día seco y pon los bulbos a secar, lejos de la humedad.',
  'week.cure':
    'Para curarlos, mantén los bulbos secos y aireados hasta que los cuellos estén apretados y las pieles crujan.',
  'week.green': 'De estas no saldrán bulbos. Arráncalas como cebolletas cuando estén gruesas como un lápiz.',
  'week.pull': 'Arranca lo que siga con el cuello grueso y cómelo fresco; no se conserva.',
  'week.lost': 'Mira si queda alguna en pie: a estas alturas la helada no ha dejado ninguna {years}.',
  'week.over': 'A estas alturas ya terminaron: arrancadas y guardadas.',
  'see.bare': 'Todavía no se ve nada: brotan hacia el {date} ({range}).',
  'see.leaves':
    'Ahora deberías ver {most, plural, one {una hoja verde} other {{leaves} hojas verdes}} en cada planta.',
  'see.bulbs':
    'Ahora deberías ver {most, plural, one {una hoja verde} other {{leaves} hojas verdes}} en cada planta, y bulbos de {across} de ancho.',
  'see.fallen': 'A estas alturas las hojas se han tumbado {years}.',
  'tops.ahead': 'Las hojas se tumban hacia el {date} ({range}).',
  'tops.some':
    'Las hojas se tumban hacia el {date} ({range}), {years}. En los demás años {otherwise, select, neck {siguen en pie y los cuellos se quedan gruesos} bulb {no se forman bulbos} winter {el invierno se lleva las plantas} other {siguen en pie}}.',
  'tops.past': 'Las hojas se tumbaron hacia el {date} ({range}).',
  'app.season.plan.is': 'Tu cultivo: {onion}, {start}, {date}.',
  'app.season.plan.name': '{onion}, {start}',
  'app.season.plan.change': 'Cambiarlo',
  'app.season.chosen':
    'No habías dicho cómo, así que esta es la manera que mejor va aquí. Cámbiala más abajo.',
  'app.season.onion': 'Cebolla',
  'app.season.onion.named': '{name} (por su nombre)',
  'app.season.onion.packet': 'como en tu sobre',
  'app.season.onion.unknown':
    'Aquí ninguna cebolla se llama “{name}”, así que se muestra la {kind, select, none {que mejor va} other {cebolla {kind}}}.',
  'app.season.onion.other': '“{name}” no es una cebolla de bulbo, así que aquí no se calcula.',
  'app.season.start': 'Se empieza con',
  'app.season.start.direct-seed': 'semilla, en siembra directa',
  'app.season.start.raised-seedlings': 'semilla, en semillero',
  'app.season.start.bought-transplants': 'plántulas compradas',
  'app.season.start.sets': 'bulbillos',
  'app.season.date.direct-seed': 'Día de siembra',
  'app.season.date.raised-seedlings': 'Día de siembra',
  'app.season.date.bought-transplants': 'Día de plantación',
  'app.season.date.sets': 'Día de plantación',
  'app.season.date.bad': '“{value}” no sirve: da un día entre el {from} y el {to}.',
  'app.season.start.not-had':
    'Que sepamos, {name} no se vende como {start}, así que se muestra otra manera de empezar.',
  'app.season.plant-out.unused':
    'Trasplantar el {date} no va con esa siembra: tiene que ser un día de los nueve meses siguientes. El día se deja a las plantas.',
  'app.season.plant-out': 'Día de trasplante',
  'app.season.plant-out.hint': 'Déjalo vacío: en cuanto las plántulas y el bancal estén listos.',
  'app.season.rows': 'Entre hileras, {unit, select, inch {pulgadas} other {cm}}',
  'app.season.rows.hint': 'Con lo siguiente: {density}.',
  'app.season.apart': 'En la hilera, {unit, select, inch {pulgadas} other {cm}}',
  'app.season.apart.hint': 'De planta a planta.',
  'app.season.set-size': 'Tamaño de los bulbillos, {unit, select, inch {pulgadas} other {mm}}',
  'app.season.set-size.hint': 'De lado a lado, por lo más ancho.',
  'app.season.set-store': 'Los bulbillos se guardaron',
  'app.season.set-store.cold': 'en frío',
  'app.season.set-store.warm': 'en calor, en una habitación con calefacción',
  'app.season.nursery': 'Temperatura de las bandejas, {unit, select, inch {°F} other {°C}}',
  'app.season.nursery.hint':
    '{temperature, select, outdoors {Si lo dejas vacío: un semillero al aire libre.} other {Si lo dejas vacío: {temperature} en interior.}}',
  'app.season.lamps': 'Horas de lámpara al día',
  'app.season.lamps.hint': 'Déjalo vacío si solo hay luz natural.',
  'app.season.picture': 'El año con este cultivo encima',
  'app.season.sections': 'En la cosecha, cortadas por la mitad',
  'app.season.dates.what': 'Qué',
  'app.season.jobs': 'Qué hacer y cuándo',
  'app.season.printed': 'Calculado el {date}.',
  'app.season.instead':
    'Otra clase u otro día pueden dar bulbos aquí. Si no, cultiva {instead} en este terreno.',
  'app.season.wrong': 'Cómo puede salir',
  'app.season.wrong.years': 'A lo largo de los años',
  'app.season.wrong.plants': 'Entre las plantas de un bancal',
  'app.season.wrong.verdict.good': 'Buenos bulbos {years}.',
  'app.season.wrong.verdict.small': 'Bulbos pequeños {years}.',
  'app.season.wrong.verdict.no-bulb': 'Hojas sin bulbo {years}.',
  'app.season.wrong.verdict.bolts': 'Plantas espigadas {years}.',
  'app.season.wrong.verdict.winter-killed': 'Cultivo perdido en invierno {years}.',
  'app.season.wrong.verdict.not-ripe': 'Bulbos de cuello grueso {years}.',
  'app.season.wrong.no-plants': 'Muy pocas plantas se pierden o se espigan.',
  'app.season.wrong.stand': 'Brotan y siguen en pie: {plants}.',
  'app.season.wrong.plant': '{title}: {plants} en un año medio; en 8 de cada 10 años: {range}.',
  'app.season.yield': 'Cuánto de cuántas',
  'app.season.yield.plants': 'Plantas',
  'app.season.yield.plants.hint': 'En pie en el bancal.',
  'app.season.yield.row': 'O hilera, {unit, select, inch {pies} other {metros}}',
  'app.season.yield.row.hint': 'A {distance} de planta a planta.',
  'app.season.yield.is':
    '{plants} plantas ocupan {row} de hilera, en {area} de bancal: {middle} de cebollas que vale la pena guardar en un año medio, {range} en 8 de cada 10 años.',
  'app.season.yield.none': 'De estas no es probable una cosecha que valga la pena guardar.',
  'app.season.days.open': 'Día a día, en un año medio ({count} días)',
  'app.season.onward.when': 'Cuándo: otros días',
  'app.season.onward.which': 'Cuál: otras cebollas',
  'app.season.save': 'Copias para llevar',
  'app.season.save.year': 'Imagen del año',
  'app.season.save.sections': 'Imagen de los bulbos',
  'app.season.save.svg': '{what} (SVG)',
  'app.season.save.png': '{what} (PNG)',
  'app.season.save.csv': 'Tabla día a día (CSV)',
  'app.season.save.print': 'Imprimir para el cobertizo',
  'app.season.save.done': 'Guardado como {file}.',
  'app.season.save.failed': 'No se pudo crear {file} ({reason}).',
  'app.caution.flower': 'Las plantas que se espigan se conservan mal: arráncalas y cómelas primero.',
  'app.caution.lamps': 'Mantén lámparas, mantas calefactoras y sus enchufes lejos del agua.',
  'app.caution.water': 'Respeta las normas locales sobre el riego en tiempo de sequía.',
  'app.caution.store':
    'La semilla y los bulbillos tratados no son comida; tampoco los bulbos ornamentales o arrancados del campo, nunca.',
} as const;
