/** Cómo abonar el cultivo. */
export const feed = {
  'feed.lead.feeds':
    '{place}: da a {crop} {count, plural, one {un solo abonado} other {# abonados}} de {product}{evenly, select, yes {, {rate} cada vez} one {, {rate},} other {, {rate} en total}}{count, plural, one { hacia el {first}} other {, del {first} al {last} más o menos}}, y nada cuando empiecen los bulbos.',
  'feed.lead.leafy':
    '{place}: {crop} no forman bulbos en los años probados. Para hojas, {count, plural, one {basta un abonado} other {bastan # abonados}} de {product}, {rate} en total.',
  'feed.lead.bed-gives': '{place}: {crop} no necesitan abono: el bancal da todo el nitrógeno que quieren.',
  'feed.lead.fed': '{place}: {crop} ya han tenido todo el abono que quieren.',
  'feed.lead.no-time':
    '{place}: a {crop} el abono no les sirve: los bulbos pueden empezar antes de que lo tomen.',
  'feed.crop.direct-seed': 'las cebollas sembradas en su sitio',
  'feed.crop.raised-seedlings': 'las cebollas de tu semillero',
  'feed.crop.bought-transplants': 'las cebollas de plántulas compradas',
  'feed.crop.sets': 'las cebollas de bulbillos',

  'feed.product.blood-meal': 'harina de sangre',
  'feed.product.feather-meal': 'harina de plumas',
  'feed.product.fish-emulsion': 'emulsión de pescado',
  'feed.product.cottonseed-meal': 'harina de algodón',
  'feed.product.soybean-meal': 'harina de soja',
  'feed.product.alfalfa-meal': 'harina de alfalfa',
  'feed.product.poultry-compost': 'gallinaza compostada',
  'feed.product.compost': 'compost',

  'feed.table': 'Abonados',
  'feed.column.stage': 'Cuándo',
  'feed.column.date': 'Hacia',
  'feed.column.nitrogen': 'Nitrógeno',
  'feed.column.rate': 'De {product}',
  'feed.column.bed': 'Para el bancal',
  'feed.stage.sowing': 'Antes de sembrar',
  'feed.stage.planting': 'Antes de plantar',
  'feed.stage.leaves': 'Con {leaves, number} hojas',
  'feed.stage.given': '{stage} (dado)',

  'feed.from.need':
    'Una cosecha de {aim} se lleva {taken} de nitrógeno y tiene que poder contar con unos {all}.',
  'feed.from.bed':
    '{fertility, select, poor {Un suelo pobre} rich {Un suelo rico} other {Un suelo corriente}} da unos {soil}{compost, select, zero {} other {, el compost {compost}}}{legume, select, zero {} other {, lo que dejaron guisantes, judías o trébol {legume}}}.',
  'feed.from.give': 'Quedan {give} por dar.',
  'feed.from.coarse':
    'Quedan {give} por dar: la lluvia se lleva una parte a través de la tierra arenosa, por eso es más y en más veces.',
  'feed.from.nothing': 'Con eso basta.',
  'feed.from.left-out':
    'De eso, {left} quedan sin repartir: {stop, select, none {más de una vez quema las raíces y se pierde con el agua} other {antes de que empiecen los bulbos no hay tiempo para más, y más de una vez quema las raíces y se pierde con el agua}}.',
  'feed.given':
    'Lo que anotaste hasta ahora suma {given} de nitrógeno; se descuenta, primero del primer abonado.',
  'feed.given-unknown':
    'Anotaste abono, pero no se puede saber cuánto es sobre el terreno: no se conoce el tamaño del bancal.',
  'feed.split':
    'Se reparte porque la cebolla toma poco al principio: con cinco hojas, cerca del {five} % de su nitrógeno; cuando empiezan los bulbos, menos del {onset} %.',
  'feed.slow':
    'Suelta el nitrógeno despacio: solo cerca del {percent} % en la primera temporada, por eso se da pronto.',
  'feed.stop':
    'Nada de nitrógeno desde el {date}, el primer día en que pueden empezar los bulbos: abonar después da cebollas tardías, blandas y de cuello grueso, que se conservan mal.',
  'feed.stop-never':
    'Los bulbos no empiezan en los años probados, así que no hay último día. Basta con poco y pocas veces.',
  'feed.besides':
    'Los abonados de la lista traen además {phosphate} de fósforo (como P₂O₅) y {potash} de potasio (como K₂O). Da más de uno u otro solo si lo pide un análisis del suelo.',
  'feed.besides-none': 'No trae fósforo ni potasio. Da uno u otro solo si lo pide un análisis del suelo.',
  'feed.besides-unknown':
    'Trae también algo de fósforo y de potasio; cuánto, lo dice la etiqueta. Da más de uno u otro solo si lo pide un análisis del suelo.',
  'feed.sulphur':
    'El azufre hace la cebolla más picante. Dalo solo si lo pide un análisis del suelo, y nada cuando empiecen los bulbos.',
  'feed.trays':
    'En el semillero: empieza con abono soluble cuando midan de {least} a {most}. Con 150 a 225 mg de nitrógeno por litro salieron mejores plántulas que con 75.',

  'feed.lime.lime':
    'Con pH {ph} el suelo es demasiado ácido para la cebolla, que quiere de {low} a {high}. Encálalo; cuánto depende del suelo, así que haz un análisis y sigue lo que se aconseje en tu zona.',
  'feed.lime.lime-perhaps':
    'Con pH {ph} el suelo es algo ácido: unas guías piden {low} o más, otras se conforman. Un análisis dice si merece la pena encalar, y cuánto.',
  'feed.lime.fits': 'Con pH {ph} el suelo le va bien a la cebolla, que quiere de {low} a {high}: sin cal.',
  'feed.lime.no-lime':
    'Con pH {ph} el suelo pasa de los {low} a {high} que le gustan a la cebolla: ni cal ni ceniza de leña. Si las hojas siguen pálidas, haz un análisis.',

  'feed.caution.label': 'Guíate por la etiqueta y por las normas de tu zona si piden menos que esto.',
  'feed.caution.leaves':
    'No dejes abono sobre las hojas, que se queman; mézclalo un poco con la tierra y riega después.',
  'feed.caution.run-off': 'No abones antes de lluvias fuertes ni cerca de acequias, charcas o pozos.',
  'feed.caution.manure':
    'Estiércol fresco: entiérralo al menos 120 días antes de cosechar, o úsalo ya compostado.',
  'feed.caution.dust':
    'Las harinas y la cal hacen polvo: que no llegue a los ojos ni a los pulmones, ni a los animales.',
  'feed.caution.lime':
    'No des cal junto con estiércol o abono de amonio: el nitrógeno se va como gas. Deja unas semanas entre ambos.',
  'feed.cautions': 'Ten cuidado',

  'feed.assumed.soil': 'No se dijo lo que da el suelo: se supone uno corriente.',
  'feed.assumed.product':
    '{said, select, none {No se nombró ningún abono} other {«{said}» no es un abono conocido aquí}}: se supone {product}.',
  'feed.assumed.aim':
    'La cosecha que se busca es la que dan aquí estas cebollas en un año medio cuando no les falta nada.',
  'feed.assumed.leafy': 'La cosecha que se busca es una pequeña, de hojas.',
  'feed.assumed.values':
    'Lo que dan suelos, compost y leguminosas, lo rápido que actúa un abono orgánico y cómo se espacian los abonados es práctica común, no medida aquí; un análisis del suelo sabe más.',
  'feed.assumed.oxides':
    'Los números de un saco son nitrógeno, fósforo como P₂O₅ y potasio como K₂O, en tanto por ciento.',
  'feed.source.uptake': 'Khokhar 2019 y CDFA (nitrógeno de la cebolla)',
  'feed.source.feeds': 'Departamento de Agricultura de Limpopo y Universidad Estatal de Iowa (abonados)',
} as const;
