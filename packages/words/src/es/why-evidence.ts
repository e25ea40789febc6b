/** Qué habla a favor de una causa o en contra, con sus números. */
export const whyEvidence = {
  'why.evidence.run-with-and-without':
    'Repetida la temporada como la contaste, esto se ve {withTenths}; sin esta causa, {withoutTenths}.',
  'why.evidence.run-only-if':
    'Repetida la temporada como la contaste, esto se ve {asToldTenths}; añadiendo esta causa, {ifTenths}.',
  'why.evidence.run-no-matter':
    'Repetida la temporada, esto se ve {withTenths} con esta causa y {withoutTenths} sin ella: da lo mismo.',
  'why.evidence.longest-day':
    'El día más largo tiene {longestH} de sol, y esta clase pide unas {neededH} para empezar los bulbos.',
  'why.evidence.needed-day-comes': 'Los días de {neededH} que pide esta clase llegan hacia el {day}.',
  'why.evidence.bulbs-began':
    'Los bulbos empezaron hacia el {day}, con {leaves, plural, one {una hoja hecha} other {unas # hojas hechas}}.',
  'why.evidence.never-began':
    'Así no empieza ningún bulbo; {leaves, plural, one {se hace una hoja} other {se hacen unas # hojas}}.',
  'why.evidence.leaves-if-earlier':
    'Empezadas {weeks, plural, one {# semana} other {# semanas}} antes, tienen {leaves, plural, one {una hoja} other {unas # hojas}} cuando empiezan los bulbos, y estos llegan a {mm}.',
  'why.evidence.bulbs-without': 'Sin esta causa los bulbos llegan a unos {mm} de ancho.',
  'why.evidence.size-without':
    'Sin esta causa los bulbos llegan a unos {mm} de ancho; con ella, a {asToldMm}.',
  'why.evidence.ripens-without':
    'Sin esta causa las hojas están tumbadas hacia el {day}; con ella casi todas siguen en pie.',
  'why.evidence.cold-met':
    'Antes de empezar los bulbos hubo {weeks, plural, one {una semana} other {unas # semanas}} de frío. Se espigan: {plantsTenths}.',
  'why.evidence.flowering-without': 'Se espigan con esta causa: {asToldTenths}; sin ella: {plantsTenths}.',
  'why.evidence.set-size':
    'Se espigan de bulbillos de {mm}: {plantsTenths}; de bulbillos de {smallMm}: {smallTenths}.',
  'why.evidence.sets-not-said':
    'No dijiste cómo eran los bulbillos. Si eran así, se espigan: {plantsTenths}.',
  'why.evidence.winter-losses': 'Mueren en invierno: {plantsTenths}; lo más frío llega a unos {coldestC}.',
  'why.evidence.frost-lifted': 'La helada saca de la tierra: {plantsTenths}.',
  'why.evidence.thirsty-days':
    'Al bancal le faltó agua {days, plural, one {cerca de # día} other {cerca de # días}}.',
  'why.evidence.mean-warmth': 'Las semanas que cuentan tienen una media de {tempC}.',
  'why.evidence.plants-per-m2': 'Estaban a {perM2}; lo habitual son {usualPerM2}.',
  'why.evidence.sun-hours':
    'El bancal tiene {hours, plural, one {cerca de # hora} other {cerca de # horas}} de sol en un día despejado de pleno verano.',
  'why.evidence.at-home': '{type}: esas son las cebollas que se cultivan a tu latitud.',
  'why.evidence.soil-at-start':
    'El bancal está a unos {tempC} en las dos semanas desde el inicio. Nacen: {upTenths}.',
  'why.evidence.store-air': 'El almacén está a unos {tempC} y con un {humidityPct} % de humedad.',
  'why.evidence.store-coldest': 'El almacén llega a enfriarse hasta {tempC}.',
  'why.evidence.keeps-usually':
    'Esta clase se guarda {months} meses; estas se guardaron {keptMonths, plural, one {# mes} other {# meses}}.',
  'why.evidence.bulbs-lost':
    'Perdidos para entonces en un almacén así: {lossTenths}; sin esta causa: {withoutTenths}.',
  'why.evidence.flies-came':
    'La mosca de la cebolla llega hacia el {day}, cuando estas estaban en el bancal.',
  'why.evidence.wet-spells': 'Las rachas húmedas que le van bien llegan {tenths}.',
  'why.evidence.warm-soil': 'La tierra está esas semanas a unos {tempC}, lo que le va bien.',
  'why.evidence.hot-and-dry':
    'Esas semanas son cálidas y secas, con una media de {tempC} y {rainMm} de lluvia.',
  'why.evidence.drying-took':
    'Al aire libre tardan en secarse {days, plural, one {cerca de # día} other {cerca de # días}} en esa época.',
  'why.evidence.goes-with': '«{symptom}» suele venir con esto.',
  'why.evidence.not-with': '«{symptom}» casi nunca viene con esto.',
  'why.evidence.said': '{question} «{answer}», dijiste.',
  'why.evidence.plan-says.water': 'Lo que dijiste del riego no encaja con esto.',
  'why.evidence.plan-says.density': 'Lo que dijiste de la distancia entre plantas no encaja con esto.',
  'why.evidence.plan-says.sun': 'Lo que dijiste del sol del bancal no encaja con esto.',
  'why.evidence.plan-says.set-size': 'Lo que dijiste del tamaño de los bulbillos no encaja con esto.',
  'why.evidence.plan-says.set-store': 'Lo que dijiste de cómo se guardaron los bulbillos no encaja con esto.',
  'why.evidence.plan-says.no-sets': 'Estas no salieron de bulbillos ({start}).',
} as const;
