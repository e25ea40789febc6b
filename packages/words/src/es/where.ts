/** Qué cebolla le va a un lugar, y para qué se está a tiempo. */
export const where = {
  'place.in-country': '{name}, {country}',
  'place.in-region': '{name}, {region}, {country}',
  'place.near': '{latitude}, {longitude}, cerca de {town}',
  'place.other': '{town} (cerca de {larger})',
  'place.latitude': '{degrees}° {side, select, south {S} other {N}}',
  'place.longitude': '{degrees}° {side, select, west {O} other {E}}',
  'buy.direct-seed': 'compra semilla de cebolla {type} y siémbrala directamente en su sitio hacia el {date}',
  'buy.raised-seedlings': 'compra semilla de cebolla {type} y siémbrala en semillero hacia el {date}',
  'buy.bought-transplants': 'compra plántulas de cebolla {type} y trasplántalas hacia el {date}',
  'buy.sets': 'compra bulbillos de cebolla {type} y plántalos hacia el {date}',
  'buy-now.direct-seed': 'compra semilla de cebolla {type} y siémbrala ahora directamente en su sitio',
  'buy-now.raised-seedlings': 'compra semilla de cebolla {type} y siémbrala ahora en semillero',
  'buy-now.bought-transplants': 'compra plántulas de cebolla {type} y trasplántalas ahora',
  'buy-now.sets': 'compra bulbillos de cebolla {type} y plántalos ahora',
  'buy-head.direct-seed':
    'Compra semilla de cebolla {type} y siémbrala directamente en su sitio hacia el {date}',
  'buy-head.raised-seedlings': 'Compra semilla de cebolla {type} y siémbrala en semillero hacia el {date}',
  'buy-head.bought-transplants': 'Compra plántulas de cebolla {type} y trasplántalas hacia el {date}',
  'buy-head.sets': 'Compra bulbillos de cebolla {type} y plántalos hacia el {date}',
  'where.good': '{place}: {buy}; las hojas se tumban hacia el {neckFall}.',
  'where.few':
    '{place}: pocas cebollas de bulbo van bien aquí en terreno abierto. Lo más probable: {buy}; hay buenos bulbos {years}.',
  'where.best-of-year': 'Lo mejor de todo el año: {buy}; las hojas se tumban hacia el {neckFall}.',
  'where.best-day': 'Su mejor día del año aquí es hacia el {date}.',
  'where.nearly':
    '{place}: {buy}; los bulbos se acercan al tamaño completo, unos {size} de ancho, y lo alcanzan {years}. Las hojas se tumban hacia el {neckFall}.',
  'where.small':
    '{place}: espera bulbos pequeños{among, select, list { de estas} other {}}, de unos {size} de ancho. Lo mejor: {buy}; las hojas se tumban hacia el {neckFall}.',
  'where.small-but':
    '{place}: {buy}, pero espera bulbos pequeños, de unos {size} de ancho; las hojas se tumban hacia el {neckFall}. Los buenos son más probables así: {better} ({betterYears}).',
  'where.gamble':
    '{place}: {among, select, list {estas cebollas} other {las cebollas de bulbo}} son aquí una apuesta. Lo más probable: {buy}; hay buenos bulbos {years}.',
  'where.gamble-but':
    '{place}: {buy}, que es una apuesta: hay buenos bulbos {years}. Son más probables así: {better} ({betterYears}).',
  'where.none':
    '{place}: {among, select, list {ninguna de estas cebollas} other {casi ninguna cebolla de bulbo}} va bien aquí en terreno abierto. Cultiva {instead} en su lugar.',
  'where.none-but':
    '{place}: las cebollas {type} van mal aquí en terreno abierto. Los buenos bulbos son más probables así: {better} ({betterYears}). O cultiva {instead}.',
  'instead.bunching': 'cebolletas de manojo',
  'instead.shallots': 'chalotas',
  'instead.potato-onions': 'cebollas multiplicadoras',
  'instead.leeks': 'puerros',
  'today.line': 'Hoy es {date}. {sentence}',
  'today.open': 'Todavía a tiempo: {starts}.',
  'today.next': 'Lo siguiente: {starts}.',
  'list.parts': '{first}; {rest}',
  'today.nothing-now': 'Ahora mismo no hay nada que empezar. Lo siguiente: {starts}.',
  'today.until-then.seed':
    'Hasta entonces: consigue semilla fresca antes del {date}; la semilla de cebolla dura un año o dos como mucho.',
  'today.until-then.plants':
    'Hasta entonces: encarga las plántulas con tiempo, para que lleguen hacia el {date}.',
  'today.until-then.no-sets':
    'Hasta entonces: encarga bulbillos cuando salgan a la venta. Los que tengas ahora no durarán tanto: plántalos pronto, y come como cebolletas los que no formen bulbo.',
  'today.until-then.sets':
    'Hasta entonces: encarga bulbillos con tiempo, y guarda los que tengas en un sitio seco, aireado y fresco hasta el {date}.',
  'today.lead-waits': 'Ahora mismo no hay cebollas {type} que empezar; lo siguiente: {starts}.',
  'today.never':
    'Se empiecen como se empiecen las cebollas {type}, la mayoría de los años no dan aquí buenos bulbos.',
  'today.other': 'A tiempo ahora, aunque aquí no sean las mejores: cebollas {type} ({starts}).',
  'today.until': '{start} hasta el {date}',
  'today.this-week': '{start} solo esta semana',
  'today.any-week': '{start} ahora y en casi todas las semanas del año',
  'today.from': '{start} a partir del {date}',
  'today.start.direct-seed': 'siembra directa',
  'today.start.raised-seedlings': 'siembra en semillero',
  'today.start.bought-transplants': 'plántulas compradas',
  'today.start.sets': 'bulbillos',
  'where.far':
    'Las clases señaladas con * son propias de otra latitud: aquí las tiendas rara vez las tienen, y lo que se dice de ellas es menos seguro.',
  'where.far-kind': '{type} *',
  'where.table': 'Qué cebolla, empezada en su mejor momento',
  'where.column.onion': 'Cebolla',
  'where.column.start': 'Empezar',
  'where.column.onset': 'Empiezan los bulbos',
  'where.column.neck-fall': 'Se tumban las hojas',
  'where.column.expect': 'Qué esperar',
  'where.start': '{start}, {date}',
  'where.expect': '{verdict}, {years}',
  'where.expect-gamble': 'una apuesta: buenos bulbos {years}',
  'where.year': 'El año aquí',
  'where.column.month': 'Mes',
  'where.column.day': 'Horas de sol',
  'where.column.mean': 'Media',
  'where.column.low': 'Noches',
  'where.column.high': 'Días',
  'where.column.rain': 'Lluvia',
  'where.column.wet-days': 'Días de lluvia',
  'where.column.frost': 'Heladas en el suelo',
  'where.longest-day': 'El día más largo tiene {longest} de sol, y el más corto {shortest}.',
  'where.frost-spring': 'Última helada de primavera: hacia el {date} ({range}).',
  'where.frost-spring-some':
    'Última helada de primavera: hacia el {date}, en los años en que la hay ({years}).',
  'where.frost-autumn': 'Primera helada de otoño: hacia el {date} ({range}).',
  'where.frost-autumn-some': 'Primera helada de otoño: hacia el {date}, en los años en que la hay ({years}).',
  'where.frost-never': 'Casi nunca hiela.',
} as const;
