/** La página Cuál. */
export const appWhich = {
  'app.which.ways': '¿Qué tienes?',
  'app.which.way.packet': 'Tengo este sobre',
  'app.which.way.list': '¿Qué puedo conseguir aquí?',

  'app.which.title': '¿Qué puedo conseguir en {place}?',
  'app.which.progress': 'Probadas {done} de {total}',
  'app.which.stop': 'Parar aquí',
  'app.which.stopped': 'Se paró tras el primer vistazo, que solo conoce un año medio.',
  'app.which.go-on': 'Probar los años de todos modos',
  'app.which.coarse': '{kind}: empieza hacia el {date}; las hojas se tumban hacia el {neckFall}.',
  'app.which.coarse-none': '{kind}: {comes}.',

  'app.which.kinds': 'Clases, cada una en su mejor momento',
  'app.which.sections': 'Todas a la misma escala, en un año medio',
  'app.which.level-best':
    '{count, plural, one {La mejor aquí} other {Las mejores aquí, tan buena una como otra}}',
  'app.which.level-next':
    '{count, plural, one {La siguiente} other {Las siguientes, tan buena una como otra}}',
  'app.which.kind.good':
    '{buy}. Las hojas se tumban hacia el {fall}. Buenos bulbos {years}; se espigan: {plants}. Se conserva {keeps}.',
  'app.which.kind.poor':
    '{buy}: {comes}. Buenos bulbos {good}; se espigan: {plants}. {fall, select, never {En la mayoría de los años las hojas no se tumban.} other {Donde las hojas se tumban, lo hacen hacia el {fall}, y los bulbos se conservan {keeps}.}}',
  'app.which.more-names': '{count, plural, one {# nombre más} other {# nombres más}} de esta clase',
  'app.which.months': '{names}: se conserva {months} meses.',
  'app.which.months-same': '{names}: iguales, que sepamos; se conservan {months} meses.',
  'app.which.when': 'Cuándo: semana a semana',
  'app.which.season': 'Temporada: qué hacer y qué ver',
  'app.which.put-beside': 'Poner junto a otras',
  'app.which.take-away': 'Quitarla otra vez',
  'app.which.see-beside': 'Verlas lado a lado',
  'app.which.for': '{what}: {name}, {start}',
  'app.which.show-all': 'Mostrar las {count} clases y nombres, también los que no van bien',
  'app.which.show-fewer': 'Mostrar solo lo mejor',
  'app.which.nothing':
    'Ninguna cebolla que conozcamos cumple todo eso: {list}. Quita algo; se venden muchas más cebollas de las que conocemos.',

  'app.which.names-level': 'Por su nombre: {names}; aquí, tan buena una como otra.',
  'app.which.far.sooner':
    'Antes, y también bien aquí: cebollas {kind}, hacia el {soon}, con buenos bulbos {years}.',
  'app.which.far.none': 'Ninguna clase que vaya bien aquí tiene su mejor momento antes de eso.',
  'app.which.far.today': 'Para qué estás a tiempo hoy',

  'app.which.came.kind': '{type}',
  'app.which.came.first': 'Estabas mirando cebollas {kind}: aquí nada va mejor.',
  'app.which.came.further':
    'Estabas mirando cebollas {kind}: están más abajo, con buenos bulbos {years}. Su sitio en la lista está señalado.',
  'app.which.came.absent': 'Estabas mirando cebollas {kind}: en esta lista no hay ninguna.',
  'app.which.came.this': 'Estabas mirando estas.',

  'app.which.sets.are': 'Los bulbillos se toman de {size} de ancho, {store}.',
  'app.which.sets.change': 'Di cómo son los tuyos',

  'app.which.narrow.is': 'Entre todas las cebollas que conocemos.',
  'app.which.narrow.among': 'Solo: {list}.',
  'app.which.narrow.change': 'Acotar',
  'app.which.narrow.clear': 'Otra vez todas las cebollas',
  'app.which.narrow.any': 'cualquiera',
  'app.which.narrow.colour': 'Piel',
  'app.which.narrow.keeps': 'Se conserva al menos, en meses',
  'app.which.narrow.keeps.hint': 'Déjalo vacío si no hace falta que se conserve.',
  'app.which.narrow.keeps-is': 'se conserva {months, plural, one {# mes} other {# meses}} o más',
  'app.which.narrow.mild': 'Solo las suaves',
  'app.which.narrow.mild-is': 'suave',
  'app.which.narrow.start': 'Se empieza con',
  'app.which.narrow.day': 'Duración del día en el sobre',
  'app.which.narrow.have': 'Solo los nombres que puedo conseguir',
  'app.which.narrow.have.hint': 'Como los tenga tu tienda o tu lista, con comas: Copra, Walla Walla.',
  'app.which.narrow.have-unknown':
    '“{name}” no está en nuestra lista.{near, plural, =0 {} other { ¿Querías decir {nearest}?}} No se tiene en cuenta.',

  'app.which.beside': 'Lado a lado',
  'app.which.beside.one': 'Elige de una a tres más para ponerlas al lado.',
  'app.which.beside.full': 'Hay cuatro lado a lado. Quita una para añadir otra.',
  'app.which.beside.fact': 'Qué',
  'app.which.row.start': 'Empezar',
  'app.which.row.onset': 'Empiezan los bulbos',
  'app.which.row.neck-fall': 'Se tumban las hojas, en 8 de cada 10 años',
  'app.which.row.across': 'Ancho del bulbo, en 8 de cada 10 años',
  'app.which.row.leaves': 'Hojas verdes al empezar los bulbos',
  'app.which.row.weeks': 'En la tierra y en la bandeja',
  'app.which.row.good': 'Buenos bulbos',
  'app.which.row.flower': 'Se espigan',
  'app.which.row.keeps': 'Se conserva',
  'app.which.row.choice': 'Oferta',
  'app.which.row.losses': 'Pérdidas',
  'app.which.row.work': 'Trabajo',
  'app.which.row.bolting': 'Espigado, según los hortelanos',
  'app.which.row.cost': 'Coste',

  'app.which.packet.is': 'Tu sobre: {list}.',
  'app.which.packet.change': 'Cambiarlo, o decir más de él',
  'app.which.packet.hours-is': '{hours} de día',
  'app.which.packet.days-is': '{days} días',
  'app.which.packet.stranger': 'No conocemos “{name}” por su nombre: esto se guía por lo que dice su sobre.',
  'app.which.packet.also-called': '“{typed}” es {name} en nuestra lista.',
  'app.which.packet.holds': '¿Qué tienes en la mano?',
  'app.which.packet.holds.seed': 'semilla',
  'app.which.packet.holds-none': 'todavía nada',
  'app.which.packet.ask-it': '¿Va bien?',
  'app.which.packet.more': 'Qué más dice',
  'app.which.packet.holds.plants': 'plántulas',
  'app.which.packet.holds.sets': 'bulbillos',
  'app.which.packet.ask-unknown': 'No conocemos “{name}”. ¿Qué más dice el sobre?',
  'app.which.packet.lead-unknown':
    'En nuestra lista está lo que se encontró escrito, y se venden muchas más cebollas. Con la duración del día para la que es, basta.',
  'app.which.packet.lead-days':
    'Los días hasta la madurez no dicen por sí solos cuándo empiezan los bulbos: da también su nombre o su duración del día.',
  'app.which.packet.skin-is': 'piel {colour}',
  'app.which.packet.ask': '¿Qué tienes en la mano?',
  'app.which.packet.lead':
    'Semilla, plántulas o bulbillos: con eso basta para una respuesta. Su nombre, o la duración del día para la que es, la hace más precisa.',
  'app.which.packet.name-field': 'Su nombre, si lo tiene',
  'app.which.packet.name-hint': 'Como está impreso; los acentos y “F1” dan igual.',
  'app.which.packet.unknown':
    'No hay ninguna cebolla “{name}” en nuestra lista: di qué es, semilla, plántulas o bulbillos, o guíate por la duración del día que lleve escrita.',
  'app.which.packet.like': '¿Querías decir {name}?',
  'app.which.packet.other-crop':
    '{name} es una chalota o una cebolla multiplicadora: crece de bulbos que se dividen, y aquí no se puede decir cómo le irá.',
  'app.which.packet.day': 'Duración del día',
  'app.which.packet.day-none': 'no lo dice',
  'app.which.packet.hours': 'o horas de día',
  'app.which.packet.hours-hint': 'Por ejemplo 14, si da horas.',
  'app.which.packet.days': 'Días hasta la madurez',
  'app.which.packet.days-hint': 'Por ejemplo 110, si da días.',
  'app.which.packet.colour': 'Piel',
  'app.which.packet.this': 'tu cebolla',
  'app.which.packet.good':
    '{place}: sí, {name} va bien. {start}; las hojas se tumban hacia el {neckFall}, con bulbos de unos {size}.',
  'app.which.packet.mostly':
    '{place}: {name} puede valer: buenos bulbos {years}. {start}; las hojas se tumban hacia el {neckFall}, con bulbos de unos {size}.',
  'app.which.packet.gamble':
    '{place}: {name} es una apuesta aquí. Lo más probable: {start}; buenos bulbos {years}.',
  'app.which.packet.nearly':
    '{place}: {name} va casi bien: bulbos de unos {size}, de tamaño completo {years}. Lo mejor: {start}; las hojas se tumban hacia el {neckFall}.',
  'app.which.packet.small':
    '{place}: {name} se queda pequeña aquí, de unos {size}. Lo mejor: {start}; las hojas se tumban hacia el {neckFall}.',
  'app.which.packet.no-bulb':
    '{place}: {name} no. {however, select, yes {Se empiece como se empiece} other {Con {from}}}, no forma bulbo{all, select, yes {} other { en la mayoría de los años}}.',
  'app.which.packet.bolts':
    '{place}: {name} no. {however, select, yes {Se empiece como se empiece} other {Con {from}}}, se espiga{all, select, yes {} other { en la mayoría de los años}}.',
  'app.which.packet.winter-killed':
    '{place}: {name} no. {however, select, yes {Se empiece como se empiece} other {Con {from}}}, se la lleva el invierno{all, select, yes {} other { en la mayoría de los años}}.',
  'app.which.packet.not-ripe':
    '{place}: {name} no. {however, select, yes {Se empiece como se empiece} other {Con {from}}}, se queda con el cuello grueso y sin terminar{all, select, yes {} other { en la mayoría de los años}}.',
  'app.which.packet.start.direct-seed':
    'siémbrala directamente en su sitio {now, select, yes {ahora} other {hacia el {date}}}',
  'app.which.packet.start.raised-seedlings':
    'siémbrala en semillero {now, select, yes {ahora} other {hacia el {date}}}',
  'app.which.packet.start.bought-transplants':
    '{held, select, yes {trasplanta tus plántulas} other {consíguela en plántulas y trasplántalas}} {now, select, yes {ahora} other {hacia el {date}}}',
  'app.which.packet.start.sets':
    '{held, select, yes {planta tus bulbillos} other {consíguela en bulbillos y plántalos}} {now, select, yes {ahora} other {hacia el {date}}}',
  'app.which.packet.start-head.direct-seed':
    'Siémbrala directamente en su sitio {now, select, yes {ahora} other {hacia el {date}}}',
  'app.which.packet.start-head.raised-seedlings':
    'Siémbrala en semillero {now, select, yes {ahora} other {hacia el {date}}}',
  'app.which.packet.start-head.bought-transplants':
    '{held, select, yes {Trasplanta tus plántulas} other {Consíguela en plántulas y trasplántalas}} {now, select, yes {ahora} other {hacia el {date}}}',
  'app.which.packet.start-head.sets':
    '{held, select, yes {Planta tus bulbillos} other {Consíguela en bulbillos y plántalos}} {now, select, yes {ahora} other {hacia el {date}}}',
  'app.which.packet.in-time': 'A tiempo hasta el {until}.',
  'app.which.packet.this-week': 'A tiempo solo esta semana.',
  'app.which.packet.taken':
    'Se toma como cebolla {type}, la que mejor va aquí: su nombre, o la duración del día que lleve escrita, lo dice con más seguridad.',
  'app.which.packet.against': 'Junto a lo mejor de aquí',
  'app.which.packet.level':
    'Si se juntan cosecha, tamaño, conservación y trabajo, aquí no conocemos ninguna mejor.',
  'app.which.packet.behind':
    'Otras van por delante de ella aquí, antes que ninguna las {kind} ({names}): {why}.',
  'app.which.packet.surer': 'buenos bulbos {years}, con esta {ownYears}',
  'app.which.packet.keeps-longer': 'se conservan {months} meses, esta {ownMonths}',
  'app.which.packet.keeps': 'de ellas se sabe que se conservan {months} meses',
  'app.which.packet.easier':
    'igual de seguras en buenos bulbos, pero más grandes, con menos trabajo o más fáciles de conseguir',
  'app.which.packet.comparing': 'Comparándola con todas las demás…',
  'app.which.packet.best': 'Lo mejor aquí: {name}',

  'app.which.starts': 'Maneras de empezar {name}',
  'app.which.starts.chosen': '{start}, como elegiste',
  'app.which.starts.perhaps': 'Tu sobre no dice si se vende en plántulas o en bulbillos.',
  'app.which.starts.known': 'Qué se sabe de cada manera',
  'app.which.starts.practice': 'práctica común, sin fuente',
  'app.which.starts.memory': 'de memoria, sin comprobar',
  'app.which.starts.sources': 'Fuentes',
  'app.caution.sets':
    'Los bulbillos grandes guardados en frío se espigan: planta los pequeños, o los tratados con calor, y come los grandes en verde.',
  'app.which.starts.facts': 'Qué resulta de cada forma',
} as const;
