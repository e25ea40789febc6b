/** Una cocina abastecida de cebollas: qué plantar, cuánto dura, qué comprar. */
export const keep = {
  'keep.answer':
    'Planta {area}: {plants, plural, one {# planta} other {# plantas}} {kinds, select, each {{lots, plural, one {de una clase} =2 {de dos clases} =3 {de tres clases} other {en # lotes}}} other {{lots, plural, =2 {en dos lotes} =3 {en tres lotes} other {en # lotes}}}}; las últimas se acaban hacia el {last}, y {bare}.',
  'keep.answer.all-year': 'nunca falta cebolla',
  'keep.answer.bare': 'en un año malo la despensa está vacía: {ranges}',
  'keep.answer.bare-most': 'la mayoría de los años la despensa está vacía: {most}',
  'keep.answer.bare-more': 'la mayoría de los años la despensa está vacía: {most}; en uno malo: {ranges}',
  'keep.none':
    'Ninguna cebolla que se consiga aquí llena la despensa de esta cocina: compra bulbos, o cultiva cebolletas.',

  'keep.lot.direct-seed':
    'Siembra {area} de cebollas {type} en su sitio hacia el {date}: {plants, plural, one {# planta} other {# plantas}} de {needed, plural, one {# semilla} other {# semillas}} ({names}); {ends}.',
  'keep.lot.raised-seedlings':
    'Siembra cebollas {type} en semillero hacia el {date} para {area}: {plants, plural, one {# planta} other {# plantas}} de {needed, plural, one {# semilla} other {# semillas}} ({names}); {ends}.',
  'keep.lot.bought-transplants':
    'Trasplanta {area} de cebollas {type} compradas como plántulas hacia el {date}: {plants, plural, one {# planta} other {# plantas}}, {needed, plural, one {un manojo} other {# manojos}} ({names}); {ends}.',
  'keep.lot.sets':
    'Planta {area} de cebollas {type} de bulbillos hacia el {date}: {plants, plural, one {# planta} other {# plantas}} de {needed, plural, one {# bulbillo} other {# bulbillos}} ({names}); {ends}.',
  'keep.lot.ready': 'listas hacia el {ready}',
  'keep.lot.ready-last': 'listas hacia el {ready}, las últimas se acaban hacia el {last}',
  'keep.lot.green': 'arráncalas tiernas desde el {ready} hasta el {last}, más o menos',
  'keep.lot.never': 'la mayoría de los años no llega ninguna a guardarse',

  'keep.lot.numbered': 'Lote {lot}: {what}',

  'keep.gap': '{range}: la despensa puede estar vacía. {closers} pueden llenar el hueco.',
  'keep.gap.open': '{range}: la despensa puede estar vacía, y nada que se cultive aquí llena el hueco.',
  'keep.closer.overwintered': 'Cebollas que pasaron el invierno en la tierra',
  'keep.closer.green-onions': 'Cebolletas',
  'keep.closer.shallots': 'Chalotas',
  'keep.closer.bought': 'Cebollas de la tienda',
  'keep.closer.other.overwintered': 'cebollas que pasaron el invierno en la tierra',
  'keep.closer.other.green-onions': 'cebolletas',
  'keep.closer.other.shallots': 'chalotas',
  'keep.closer.other.bought': 'cebollas de la tienda',

  'keep.eat.order': 'Cómelas en este orden: {lots}.',
  'keep.eat.order.one': 'el lote {lot} (cebollas {kind}, hasta hacia el {last})',
  'keep.eat.flowered':
    'Cebollas {kind}: el {percent} % se sube a flor; come esas primero, que no se guardan.',
  'keep.eat.unripe':
    'Cebollas {kind}: se arrancan sin madurar {years}; come primero las de cuello grueso, que no se guardan.',
  'keep.eat.stored':
    '{name}: {thick, select, none {} other {el {thick} % tenía el cuello grueso, así que cómelas primero; }}de lo sano, el {percent} % brota o se pudre en 30 días; se acaba hacia el {last}.',
  'keep.eat.thick': 'Come los bulbos de cuello grueso, golpeados o dobles antes que los demás.',

  'keep.in-store':
    '{name}, arrancada el {date}: {amount, select, none {} other {{amount} sanos, }}{percent} % de lo arrancado; se acaba hacia el {last}.',
  'keep.in-store.look': 'Repásalas hacia el {date}.',
  'keep.in-store.bulbs': '{count, plural, one {# bulbo} other {# bulbos}}',

  'keep.shop.seeds':
    '{count, plural, one {# semilla} other {# semillas}} de cebollas {type} ({names}): unos {mass} de semilla.',
  'keep.shop.sets':
    '{count, plural, one {# bulbillo} other {# bulbillos}} de cebollas {type} ({names}), de {size} de ancho: unos {mass}.',
  'keep.shop.bundles':
    '{count, plural, one {Un manojo} other {# manojos}} de cebollas {type} ({names}), para {plants, plural, one {# planta} other {# plantas}}.',
  'keep.shop.trays':
    'Bandejas con {cells, plural, one {# alvéolo} other {# alvéolos}} en total, y {compost} de sustrato de siembra.',
  'keep.shop.labels':
    '{count, plural, one {Una etiqueta} other {# etiquetas}}, una por cada lote que se guarda.',

  'keep.store.cellar': 'sótano',
  'keep.store.shed': 'cobertizo',
  'keep.store.garage': 'garaje',
  'keep.store.kitchen': 'cocina',
  'keep.store.fridge': 'nevera',
  'keep.store.own': 'un almacén medido por ti',
  'keep.like.mild': 'cebollas suaves',
  'keep.like.keeper': 'cebollas de guarda',
  'keep.like.red': 'cebollas rojas',
  'keep.like.green': 'cebolletas',
  'keep.unmet': 'Nada que se consiga aquí cumple el deseo de {likes}.',

  'keep.how.supplied':
    'La despensa se probó en {tried} años así, plantando cada año lo mismo: salvo los días en que puede estar vacía, cada día está abastecido {years}.',
  'keep.how.store':
    'El almacén ({store}) tiene {temps} y {damp} % de humedad a lo largo del año{said, select, own {, como dijiste} read {, calculado del clima del lugar y acercado a {readings, plural, one {tu lectura} other {tus # lecturas}}} other {, calculado del clima del lugar: no se encontró ningún estudio de almacenes caseros}}.',
  'keep.how.taught':
    'Se {looks, plural, one {cuenta una revisión} other {cuentan # revisiones}} de lo que se guardó ahí: las cebollas brotan {sprouting, select, sooner {cerca de un {share} % antes de lo usual} later {cerca de un {share} % después de lo usual} other {tan pronto como es usual}} y {rotting, select, more {se pudren más} fewer {se pudren menos} other {se pudren tantas como es usual}}.',
  'keep.how.use.given':
    'La cocina come {week} a la semana, para {people, plural, one {una persona} other {# personas}}, como dijiste.',
  'keep.how.use.usual':
    'No se dijo cuánto coméis: {each} por persona y semana es lo usual, {week} para {people, plural, one {una persona} other {# personas}} (fuente: {source}).',
  'keep.how.weights':
    'La semilla se calcula a {gram} semillas por gramo (un productor de semilla), los bulbillos algo más largos que anchos, de 2 a 3 g con 16 mm (ensayos en Asiut).',
  'keep.source.published': '{title}{year, select, none {} other { (de {year})}}',
  'keep.source.united-nations':
    'cifras de las Naciones Unidas{year, select, none {} other { de {year}}}, según {title}',
  'keep.source.conference': 'un informe de congreso de {year}',
  'keep.source.memory': 'conocimiento general de las hojas de balance de alimentos, sin comprobar',
} as const;
