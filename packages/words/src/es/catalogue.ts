/** Cebollas por su nombre, y qué se sabe de cada manera de empezarlas. */
export const catalogue = {
  'help.cultivars':
    'Las cebollas conocidas por su nombre: todas, las que se parecen a un nombre, o una entera con sus fuentes.',
  'help.cultivar-name': 'una cebolla para mostrarla entera, por ejemplo Walla Walla',
  'help.find': 'solo cebollas con este texto en alguno de sus nombres',
  'help.filter-class':
    'solo las de día corto (short), intermedio (intermediate) o largo (long), según el sobre',
  'help.colour':
    'solo las de piel amarilla (yellow), marrón (brown), roja (red), rosada (pink) o blanca (white)',

  'error.cultivar-unknown':
    'No hay ninguna cebolla "{value}" en la lista.{near, plural, =0 {} other { ¿Querías decir {nearest}?}} `neckfall cultivars` las muestra todas; para otra cebolla, guíate por el sobre con --class.',
  'clash.one-onion': 'una cebolla se muestra entera.',

  'colour.yellow': 'amarilla',
  'colour.brown': 'marrón',
  'colour.red': 'roja',
  'colour.pink': 'rosada',
  'colour.white': 'blanca',
  'shape.flat': 'aplanada',
  'shape.flattened-globe': 'globosa achatada',
  'shape.globe': 'globosa',
  'shape.tall-globe': 'globosa alta',
  'shape.top': 'de peonza, honda',
  'shape.long': 'alargada',
  'shape.cluster': 'un grupo de bulbos pequeños',
  'use.sets': 'se vende en bulbillos',
  'use.overwinters': 'aguanta el invierno',
  'use.storage': 'de guarda',
  'use.sweet': 'dulce',
  'use.spanish': 'cebolla de tipo español (grano)',
  'use.pickling': 'para encurtir',
  'use.drying': 'para secar',
  'use.wet-season': 'para la estación de lluvias',
  'maturity.early': 'temprana',
  'maturity.middle': 'media',
  'maturity.late': 'tardía',

  'cultivars.one':
    '{name}: {what}{colour, select, none {} other { de piel {colour}}}. Se conserva {months} meses en un sitio seco, fresco y aireado.',
  'cultivars.a.tropical-short': 'una cebolla de día corto tropical',
  'cultivars.a.short': 'una cebolla de día corto',
  'cultivars.a.intermediate': 'una cebolla de día intermedio',
  'cultivars.a.early-long': 'una cebolla de día largo temprano',
  'cultivars.a.northern-long': 'una cebolla de día largo del norte',
  'cultivars.a.shallot': 'una chalota',
  'cultivars.a.multiplier': 'una cebolla multiplicadora',
  'cultivars.not-tried':
    'Las chalotas y las cebollas multiplicadoras se cultivan a partir de bulbos que se dividen. Están en la lista, pero Neckfall no puede decir cómo les irá.',
  'cultivars.known': 'Qué se sabe',
  'cultivars.list':
    '{count, plural, one {# cebolla} other {# cebollas}} por su nombre. `neckfall cultivars NOMBRE` muestra una entera.',
  'cultivars.none': 'Ninguna cebolla de la lista es así. `neckfall cultivars` las muestra todas.',
  'cultivars.column.name': 'Cebolla',
  'cultivars.column.type': 'Duración del día',
  'cultivars.column.colour': 'Piel',
  'cultivars.column.keeps': 'Se conserva',
  'cultivars.column.starts': 'Se consigue en',
  'cultivars.months': '{range} meses',
  'cultivars.seed': 'semilla',
  'cultivars.plants': 'plántulas',
  'cultivars.sets': 'bulbillos',
  'cultivars.bulbs': 'bulbos que se dividen',
  'cultivars.row.aliases': 'También llamada',
  'cultivars.row.class': 'En el sobre',
  'cultivars.row.type': 'Se toma como',
  'cultivars.row.need': 'Los bulbos empiezan con',
  'cultivars.row.colour': 'Piel',
  'cultivars.row.shape': 'Forma',
  'cultivars.row.uses': 'Uso',
  'cultivars.row.mild': 'Sabor',
  'cultivars.row.maturity': 'Maduración',
  'cultivars.row.daysToMaturity': 'Días hasta la madurez',
  'cultivars.row.hybrid': 'Semilla',
  'cultivars.row.bolting': 'Se espiga',
  'cultivars.row.keepsMonths': 'Se conserva',
  'cultivars.row.dryMatterShare': 'Materia seca',
  'cultivars.row.regions': 'Se cultiva en',
  'cultivars.row.soldIn': 'Se vende a menudo en',
  'cultivars.row.starts': 'Se empieza con',
  'cultivars.row.traits': 'Cómo crece aquí',
  'cultivars.mild.yes': 'suave',
  'cultivars.mild.no': 'picante',
  'cultivars.hybrid.yes': 'híbrida (F1)',
  'cultivars.hybrid.no': 'de polinización abierta: se puede guardar semilla',
  'cultivars.bolting.slow': 'menos que la mayoría',
  'cultivars.bolting.ready': 'más que la mayoría',
  'cultivars.need.sun-up': '{hours} de sol, del orto al ocaso',
  'cultivars.need.twilight': '{hours} de día, contando el crepúsculo',
  'cultivars.need.lamps': '{hours} bajo lámparas',
  'cultivars.need.onset-seen': '{hours} de sol el día en que se vieron los bulbos, así que algo menos',
  'cultivars.need.between': 'de {from} a {to}',
  'cultivars.days.sowing': '{range} desde la siembra',
  'cultivars.days.transplanting': '{range} desde el trasplante',
  'cultivars.days.set-planting': '{range} desde la plantación de los bulbos',
  'cultivars.dry-matter': '{percent} % del bulbo',
  'cultivars.trait.day': 'los bulbos empiezan con {hours} de día, del alba al anochecer (su clase: {usual})',
  'cultivars.trait.sooner': 'madura un {percent} % antes que su clase',
  'cultivars.trait.later': 'madura un {percent} % después que su clase',
  'cultivars.trait.slow': 'se espiga menos',
  'cultivars.trait.ready': 'se espiga más',
  'cultivars.trait.dry': '{percent} % de materia seca (su clase: {usual} %)',
  'cultivars.trait.none': 'como las demás de su clase',
  'cultivars.from.source': 'fuente {number}',
  'cultivars.from.memory': 'de memoria, sin comprobar',
  'cultivars.from.kind': 'lo usual en su clase: de memoria, sin comprobar',
  'cultivars.from.worked-out': 'deducido de {reasons}',
  'cultivars.reason.printed': 'la duración del día de su sobre',
  'cultivars.reason.need': 'la duración del día hallada en ensayos',
  'cultivars.reason.region': 'dónde se cultiva',
  'cultivars.reason.use': 'su uso',
  'cultivars.reason.maturity': 'cuándo madura',
  'cultivars.reason.keeping': 'cuánto se conserva',
  'cultivars.source': '{number}: {title}',
  'cultivars.assumed.type':
    'La clase de cada cebolla se deduce de su duración del día, su lugar, su uso y su maduración.',
  'cultivars.assumed.keeps':
    'Donde no se publicaron meses de conservación, son los usuales de su clase, de memoria.',
  'cultivars.assumed.memory':
    'Lo señalado como memoria es saber general del oficio y no se comprobó. En la lista está lo que se encontró escrito: se venden muchas más cebollas.',

  'start-level.choice.least': 'casi sin oferta',
  'start-level.choice.little': 'pocas clases',
  'start-level.choice.more': 'muchas clases',
  'start-level.choice.most': 'cualquier clase',
  'start-level.bolting.least': 'rara vez se espigan',
  'start-level.bolting.little': 'a veces se espigan',
  'start-level.bolting.more': 'se espigan más a menudo',
  'start-level.bolting.most': 'son las que más se espigan',
  'start-level.losses.least': 'pocas',
  'start-level.losses.little': 'algunas',
  'start-level.losses.more': 'muchas',
  'start-level.losses.most': 'más que de ninguna otra forma',
  'start-level.work.least': 'lo que menos trabajo da',
  'start-level.work.little': 'poco trabajo',
  'start-level.work.more': 'mucho trabajo',
  'start-level.work.most': 'lo que más trabajo da',
  'start-level.cost.least': 'lo más barato',
  'start-level.cost.little': 'barato',
  'start-level.cost.more': 'caro',
  'start-level.cost.most': 'lo más caro',

  'start-fact.seed-days-spring':
    'Las cebollas de día largo sembradas en primavera maduran en {fromDays}–{toDays} días.',
  'start-fact.seed-days-autumn':
    'Las cebollas de día corto sembradas en otoño tardan {fromDays}–{toDays} días.',
  'start-fact.seed-choice': 'Cualquier cebolla se consigue en semilla.',
  'start-fact.seed-overwinter-choice':
    'Para aguantar un invierno frío hacen falta clases mejoradas para eso.',
  'start-fact.seed-late-small':
    'Las plantas sembradas tarde pueden quedar demasiado pequeñas para que el frío las haga espigarse.',
  'start-fact.seed-autumn-dates':
    'Para pasar el invierno, en Gran Bretaña, siembra a mediados o a finales de agosto: sembradas a primeros de agosto, muchas se espigan.',
  'start-fact.seed-field-loss':
    'De las semillas que pueden germinar, el {fromPct}–{toPct} % nunca llega a planta.',
  'start-fact.seed-winter-tunnel':
    'Bajo túneles bajos en Nuevo Hampshire, el {fromPct}–{toPct} % de las plantas pasó el invierno.',
  'start-fact.seed-work':
    'Sembrar es rápido; la semilla brota desigual, crece despacio y pide mucho deshierbe.',
  'start-fact.seed-cheapest': 'La semilla es la manera más barata.',
  'start-fact.seed-late-necks':
    'Si se siembra demasiado tarde en primavera, los bulbos quedan sin terminar y los cuellos gruesos.',
  'start-fact.seed-autumn-cold':
    'Las clases para pasar el invierno aguantan rachas cortas de hasta {coldTempC}.',
  'start-fact.treated-seed':
    'La semilla tratada no es comida: usa guantes y mantenla lejos de niños y animales.',
  'start-fact.raised-weeks': 'Siembra {fromWeeks}–{toWeeks} semanas antes del trasplante.',
  'start-fact.raised-weeks-shorter': 'Otros siembran {fromWeeks}–{toWeeks} semanas antes del trasplante.',
  'start-fact.raised-days': 'Desde el trasplante, las cebollas de día largo tardan {fromDays}–{toDays} días.',
  'start-fact.raised-clumps':
    'Dos o tres plantas juntas maduran una semana antes; las plantas sueltas dan los bulbos más grandes.',
  'start-fact.raised-choice': 'Cualquier semilla se puede criar en bandejas.',
  'start-fact.raised-old-plants':
    'Las plantas tenidas {weeks} semanas en alvéolos grandes fueron las que más se espigaron.',
  'start-fact.raised-young-plants':
    'Las plantas de {youngWeeks} semanas salieron adelante peor que las de {olderWeeks} semanas.',
  'start-fact.raised-plugs':
    'Las bandejas de alvéolos ahorran a las plantas el golpe del trasplante, y mucha podredumbre.',
  'start-fact.raised-setback': 'El trasplante retrasa las plantas {fromWeeks}–{toWeeks} semanas.',
  'start-fact.raised-work': 'Lo que más trabajo da en primavera, y después lo que menos deshierbe pide.',
  'start-fact.raised-cost': 'La semilla es barata; bandejas, sustrato, luz y calor no lo son.',
  'start-fact.raised-lamps-start':
    'Las lámparas encendidas más horas de las que pide la cebolla hacen empezar los bulbos en la bandeja.',
  'start-fact.lamps-and-water': 'Mantén lámparas, mantas calefactoras y sus cables lejos del agua.',
  'start-fact.bought-days': 'Desde la plantación, las cebollas de día largo tardan {fromDays}–{toDays} días.',
  'start-fact.bought-choice': 'Pocas clases con nombre: pregunta la duración del día si no está impresa.',
  'start-fact.bought-thick': 'Las plantas que ya tienen cinco hojas se espigan tras el frío.',
  'start-fact.bought-thin': 'Elige plantas firmes y verdes de 3–5 hojas, no más gruesas que un lápiz.',
  'start-fact.bought-holding':
    'En un sitio fresco y seco las plantas duran hasta {weeks} semanas; no las mojes.',
  'start-fact.bought-frost': 'Una vez enraizadas, las plantas aguantan {coldTempC}.',
  'start-fact.bought-heavier':
    'Las plantas a raíz desnuda dieron bulbos un {pct} % más pesados que las de bandeja.',
  'start-fact.bought-work': 'Poco trabajo: plantar y algo de deshierbe.',
  'start-fact.bought-plugs-cost': 'Las de alvéolo cuestan {from}–{to} veces lo que las de raíz desnuda.',
  'start-fact.bought-diseases': 'Plantas venidas de lejos han traído podredumbre del cuello y trips.',
  'start-fact.plants-across-borders':
    'Plántulas y bulbillos pueden llevar podredumbre blanca, carbón y mosca minadora: pregunta a tu servicio de sanidad vegetal antes de pasarlos por una frontera.',
  'start-fact.sets-days': 'Bulbos secos {fromDays}–{toDays} días después de plantar.',
  'start-fact.sets-green-days': 'Cebolletas a los {fromDays}–{toDays} días.',
  'start-fact.sets-heated-later':
    'Los bulbillos tratados con calor tardan {fromWeeks}–{toWeeks} semanas más.',
  'start-fact.sets-choice': 'Se suelen vender solo por el color: el nombre se pierde por el camino.',
  'start-fact.sets-long-day':
    'Casi todos son de día largo, de poco provecho para bulbos donde los días no se alargan.',
  'start-fact.sets-size':
    'Para bulbos, planta bulbillos de menos de {sizeMm} de ancho; los más grandes, cómelos en verde.',
  'start-fact.sets-size-larger':
    'Otros ponen el límite en {sizeMm}: los bulbillos más grandes se espigan a menudo.',
  'start-fact.sets-heated':
    'Los bulbillos tenidos a {warmTempC} durante {weeks} semanas apenas se espigaron.',
  'start-fact.sets-warm-end':
    '{weeks} semanas a {fromTempC} o hasta {toTempC} al final de un almacén frío casi acabaron con el espigado en un híbrido; una clase más antigua necesitó más tiempo.',
  'start-fact.sets-store-loss':
    'De los bulbillos guardados justo por encima de la helada se pierden menos y se espigan más; en calor se pierden más.',
  'start-fact.sets-work': 'Lo que menos trabajo da: hundirlos en la tierra y espantar a los pájaros.',
  'start-fact.sets-cost': 'Más caros que la semilla y más baratos que las plantas de alvéolo.',
  'start-fact.sets-keep-less': 'Las cebollas de guarda salen mejor de plantas que de bulbillos.',
  'start-fact.sets-large-yield':
    'En Sudán los bulbillos grandes rindieron un {fromPct}–{toPct} % más que los pequeños.',
  'start-fact.treated-sets': 'Los bulbillos tratados no son comida.',
} as const;
