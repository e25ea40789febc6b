/** La hoja para repartir: una página para un lugar. Señales y modos de trabajar son práctica común, sin fuente. */
export const handout = {
  'handout.heading': 'Cebollas para {place}',
  'handout.dateline': '{place, select, none {} other {{place}. }}Calculado el {date}.',
  'handout.buy': 'Qué comprar',
  'handout.buy.direct-seed': 'Semilla de cebolla {type}, fresca: dura uno o dos años como mucho.',
  'handout.buy.raised-seedlings': 'Semilla de cebolla {type}, fresca: dura uno o dos años como mucho.',
  'handout.buy.bought-transplants': 'Plantones de cebolla {type}.',
  'handout.buy.sets': 'Bulbillos de cebolla {type}, de unos {size} de ancho, firmes y sin brotar.',
  'handout.names': 'Nombres que buscar: {names}.',
  'handout.names.none':
    '{country, select, none {No sabemos qué nombres se venden aquí} other {No sabemos qué nombres se venden aquí ({country})}}: pide por el tipo.',
  'handout.row.seed':
    'Para {length} de surco: {count} semillas, aclaradas a una planta cada {apart}; surcos a {rows}.',
  'handout.row.trays':
    'Para {length} de surco: {count} semillas en semillero, para una planta cada {apart}; surcos a {rows}.',
  'handout.row.plants': 'Para {length} de surco: {count} plantones, uno cada {apart}; surcos a {rows}.',
  'handout.row.sets': 'Para {length} de surco: {count} bulbillos, uno cada {apart}; surcos a {rows}.',
  'handout.when': 'Cuándo',
  'handout.when.what': 'Qué',
  'handout.when.middle': 'En un año medio',
  'handout.start.direct-seed': 'Sembrar en su sitio',
  'handout.start.raised-seedlings': 'Sembrar en semillero',
  'handout.start.bought-transplants': 'Poner los plantones',
  'handout.start.sets': 'Plantar los bulbillos',
  'handout.signs': 'Cómo saber que es la hora',
  'handout.sign.ground':
    'Para {from, select, seed {sembrar} other {plantar}}: un puñado de tierra se desmenuza y no se pega.',
  'handout.sign.out':
    'Para trasplantar: las plántulas tienen unas {leaves} hojas o llevan {weeks} semanas, y el bancal está a {temperature} o más.',
  'handout.sign.ripe':
    'Para arrancar: los cuellos se ablandan justo encima del bulbo y las hojas se tumban solas, hacia el {date}. Espera a que se tumbe más de la mitad.',
  'handout.sign.unripe':
    'Para arrancar: la mayoría de los años los cuellos quedan gruesos aquí. Arráncalas antes de que el frío las pare y come esas primero.',
  'handout.sign.dry': 'Para guardar: los cuellos están prietos y secos del todo, y las pieles crujen.',
  'handout.year': 'El año aquí',
  'handout.work': 'Un año de labores',
  'handout.days.from': 'desde el {date}',
  'handout.work.sow':
    '{tray, select, yes {Sembrar en semillero} other {Sembrar en su sitio}}, a {depth} de hondo.',
  'handout.work.prick-out': 'Repicar las plántulas que estén apretadas.',
  'handout.work.trim': 'Recortar las hojas de las plántulas a unos 100 mm, para que sigan recias.',
  'handout.work.harden': 'Endurecer las plántulas: fuera, cada día más rato.',
  'handout.work.plant': 'Plantar, a {depth} de hondo.',
  'handout.work.feed':
    'Abonar con {amounts} de {product}{times, plural, one {} other { cada vez}}{stop, select, none {} other {; nada desde el {stop}}}.',
  'handout.work.feed-stop': 'No dar más abono desde aquí.',
  'handout.work.weed': 'Mantener el bancal sin malas hierbas.',
  'handout.work.thin': 'Arrancar una planta de cada dos como cebolleta.',
  'handout.work.water':
    'Tocar la tierra y regar cuando esté seca{stop, select, none {} other {; nada desde hacia el {stop}}}.',
  'handout.work.water-stop': 'Dejar de regar.',
  'handout.work.flies': 'Mantener cerrada la malla o el velo: {flies}.',
  'handout.fly.onion': 'mosca de la cebolla',
  'handout.fly.seedcorn': 'mosca de los sembrados',
  'handout.work.watch-thrips': 'Buscar trips entre las hojas más jóvenes.',
  'handout.work.watch-mildew': 'Buscar pelusa gris en las hojas: mildiu.',
  'handout.work.check-tops': 'Mirar las hojas dos veces por semana.',
  'handout.work.lift': 'Arrancar, cuando más de la mitad de las hojas estén tumbadas.',
  'handout.work.lift-unripe': 'Arrancar, hagan lo que hagan las hojas.',
  'handout.work.pull-green': 'Arrancar como cebolletas.',
  'handout.work.dry': 'Secar, en sitio templado y aireado, a cubierto de la lluvia.',
  'handout.work.store': 'Limpiar; llevar los bulbos sanos a un almacén seco, fresco y aireado.',
  'handout.work.check-store': 'Repasar las guardadas y quitar las blandas o brotadas.',
  'handout.caution.rules':
    'Las etiquetas y las normas locales van antes que esta hoja: en tratamientos, abonos, riego y traslado de plantas. Los asesores locales conocen tu tierra.',
  'handout.sure': 'Hasta qué punto es seguro, y de dónde sale',
  'handout.sources': 'Hecha con Neckfall {version}. Fuentes: {sources}.',
} as const;
