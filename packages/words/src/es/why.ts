/** Qué salió mal en un cultivo: qué fue, cuánto se sabe, qué se puede salvar, qué habría ayudado. */
export const why = {
  'why.chance.tenths': '{tenths} de cada 10',
  'why.chance.least': 'menos de 1 de cada 20',
  'why.chance.most': 'más de 19 de cada 20',
  'why.lead.sure': '{cause}. Lo más probable: {chance}.',
  'why.lead.likely': '{cause}. Probable, pero no seguro: {chance}.',
  'why.lead.unsure': 'Puede ser una de varias cosas. {cause}: {chance}, y no se conoce nada más probable.',
  'why.usual':
    'Repetido tal como lo contaste, esto aparece {seasons} se haga lo que se haga: puede ser el año, o aquel sobre de semilla.',
  'why.unseen': 'Otra cosa, que ningún cálculo ni ninguna lista conoce: {chance}.',

  'why.eating.yes': 'Lo que está firme y limpio se puede comer.',
  'why.eating.cut-away':
    'Corta la parte mala con bastante de lo que la rodea: come solo lo que esté firme, limpio y huela bien.',
  'why.eating.no': 'No comas las estropeadas; las firmes y limpias que hay al lado se pueden comer.',
  'why.storing.yes': 'Una vez secas se guardan como las demás.',
  'why.storing.eat-first': 'No se guardan mucho tiempo: cómelas antes que las demás.',
  'why.storing.no': 'No guardes ninguna que lo muestre.',

  'why.caution.mould-throw-away':
    'Tira enteros los bulbos blandos, mojados o mohosos: el moho llega más lejos de lo que se ve, y algunos dan veneno.',
  'why.caution.not-sure-is-it-onion':
    'Estruja una hoja con las manos limpias. Si no huele a cebolla, no la comas: bulbos venenosos como los de lirio de los valles o de zigadeno se parecen mucho.',
  'why.caution.pets':
    'La cebolla envenena a perros, gatos y ganado, cruda, cocida o podrida: guarda de ellos bulbos, pieles y restos.',
  'why.caution.do-not-move-soil':
    'Lo que vive en esa tierra dura muchos años: no la lleves a otros bancales en botas, herramientas ni plantas.',
  'why.caution.not-on-compost':
    'Echa las plantas y los bulbos enfermos a la basura, no al compost, donde el mal sigue vivo.',
  'why.caution.pesticide-local-rules':
    'Antes de fumigar nada, pregunta qué se permite donde vives. Deciden las normas locales, el consejo autorizado y la etiqueta, también sobre los días antes de cosechar.',
  'why.caution.green-is-not-potato':
    'El verde de una cebolla no es el veneno de la patata verde: no hace daño, solo amarga.',

  'why.grown.sound': '{bulbs} siguen sanos',
  'why.grown.flower':
    '{tenths, plural, =0 {casi ninguna planta se espiga} =10 {casi todas las plantas se espigan} one {# planta de cada 10 se espiga} other {# plantas de cada 10 se espigan}}',
  'why.grown.winter': 'perdidas en invierno casi todas',
  'why.grown.no-bulb': 'sin bulbos',
  'why.grown.thick': 'cuellos gruesos en bulbos de {size} de ancho',
  'why.grown.size': '{size} de ancho',
  'why.grown.good': '{grown}, buenos bulbos {years}',
  'why.what-if':
    '{way, select, kept {Como se guardaron} unsaid {Si fue así} other {Como se cultivaron}}: {was}; {change}: {would}.',
  'why.next-year': '{change}: {would}.',
  'why.next-year.same': 'Si eso no vuelve, con el mismo plan el año que viene: {would}.',

  'why.time.days': '{count, plural, one {# día} other {# días}}',
  'why.time.weeks': '{count, plural, one {# semana} other {# semanas}}',
  'why.of.seasons':
    '{tenths, plural, =0 {en casi ninguna temporada} =10 {en casi todas las temporadas} other {en # de cada 10 temporadas}}',
  'why.of.plants':
    '{tenths, plural, =0 {casi ninguna} =10 {casi todas} one {# planta de cada 10} other {# plantas de cada 10}}',
  'why.of.bulbs':
    '{tenths, plural, =0 {casi ninguno} =10 {casi todos} one {# bulbo de cada 10} other {# bulbos de cada 10}}',
  'why.of.seeds':
    '{tenths, plural, =0 {casi ninguna} =10 {casi todas} one {# semilla de cada 10} other {# semillas de cada 10}}',

  'why.change.other-kind': 'con cebollas {type}',
  'why.change.other-start.direct-seed': 'con cebollas {type} de siembra directa hacia el {date}',
  'why.change.other-start.raised-seedlings': 'con cebollas {type} sembradas en semillero hacia el {date}',
  'why.change.other-start.bought-transplants':
    'con cebollas {type} de plántulas compradas, plantadas hacia el {date}',
  'why.change.other-start.sets': 'con cebollas {type} de bulbillos plantados hacia el {date}',
  'why.change.earlier': 'empezadas {time} antes, hacia el {date}',
  'why.change.later': 'empezadas {time} después, hacia el {date}',
  'why.change.smaller-sets': 'de bulbillos de {size} de ancho',
  'why.change.warm-stored-sets': 'de bulbillos guardados en calor',
  'why.change.watered': 'regadas cuando hace falta',
  'why.change.wider': 'con más sitio, {density}',
  'why.change.in-sun': 'a pleno sol',
  'why.change.covered': '{cover, select, tunnel {en túnel} other {bajo manta térmica}}',
  'why.change.usual-kind': 'cultivadas del tipo que es usual aquí',
  'why.change.usual-day': 'empezadas cuando es usual aquí',
  'why.change.fresh-packet': 'con semilla que es lo que dice su sobre',
  'why.change.cool-store': 'guardadas a {temp} o menos',
  'why.change.dry-store': 'guardadas con un {humidity} % de humedad o menos',
  'why.change.frost-free-store': 'guardadas sin que hiele',
  'why.change.better-keeper': 'con una clase que se guarda {months, plural, one {# mes} other {# meses}}',
  'why.change.lifted-ripe': 'arrancadas ya maduras',
  'why.change.usual-weather': 'con el tiempo habitual del lugar',
  'why.change.other-weather': 'en una temporada {by} más {way, select, colder {fresca} other {cálida}}',

  'why.next.other-kind': 'El año que viene cultiva cebollas {type}',
  'why.next.other-start.direct-seed': 'El año que viene siembra cebollas {type} en su sitio hacia el {date}',
  'why.next.other-start.raised-seedlings':
    'El año que viene siembra cebollas {type} en semillero hacia el {date}',
  'why.next.other-start.bought-transplants':
    'El año que viene planta cebollas {type} de plántulas compradas hacia el {date}',
  'why.next.other-start.sets': 'El año que viene planta bulbillos de cebolla {type} hacia el {date}',
  'why.next.earlier': 'El año que viene empieza {time} antes, hacia el {date}',
  'why.next.later': 'El año que viene empieza {time} después, hacia el {date}',
  'why.next.smaller-sets': 'El año que viene planta bulbillos de {size} de ancho como mucho',
  'why.next.warm-stored-sets': 'El año que viene planta bulbillos guardados en calor',
  'why.next.watered': 'El año que viene riega antes de que se seque el bancal',
  'why.next.wider': 'El año que viene dales más sitio, {density}',
  'why.next.in-sun': 'El año que viene dales un bancal a pleno sol',
  'why.next.covered':
    'El año que viene cultívalas {cover, select, tunnel {en túnel} other {bajo manta térmica}}',
  'why.next.usual-kind': 'El año que viene cultiva el tipo que es usual aquí',
  'why.next.usual-day': 'El año que viene empieza cuando es usual aquí',
  'why.next.fresh-packet': 'El año que viene siembra una clase con nombre, de un sobre nuevo',
  'why.next.cool-store': 'El año que viene guárdalas tan cerca de {temp} como puedas',
  'why.next.dry-store': 'El año que viene guárdalas donde el aire no pase del {humidity} % de humedad',
  'why.next.frost-free-store': 'El año que viene guárdalas donde no hiele',
  'why.next.better-keeper':
    'El año que viene cultiva una clase que se guarde {months, plural, one {# mes} other {# meses}}',
  'why.next.lifted-ripe': 'El año que viene espera para arrancar a que casi todas las hojas estén tumbadas',
} as const;
