/** Qué cebolla, empezada cómo. */
export const which = {
  'help.which':
    'Qué cebollas van mejor aquí, cada una en su mejor momento: primero las clases, dentro los nombres.',
  'help.which-start':
    'solo las que se empiezan así: direct-seed, raised-seedlings, bought-transplants o sets',
  'help.keeps': 'solo las que se conservan al menos esos meses',
  'help.mild': 'solo las suaves',
  'help.have':
    'solo estas cebollas, por ejemplo "Copra, Walla Walla"; con una, sus maneras de empezar lado a lado',
  'help.limit': 'cuántas mostrar (si no: 20)',

  'error.no-such-onion':
    'Ninguna cebolla de la lista cumple todo eso: {filters}. Quita algo; `neckfall cultivars` las muestra todas.',

  'which.names': 'Nombres: {names}; iguales, que se sepa.',
  'which.name': 'Por su nombre: {names}.',
  'which.elsewhere': '{count} de otras tierras',
  'which.no-name-here':
    'No se sabe qué cebollas se venden aquí ({country}): estos nombres son de otras tierras. Pide la clase, no el nombre.',
  'which.others-here':
    'Que sepamos, {told, plural, one {no} other {ninguna de estas}} se vende ni se cultiva aquí ({country}); de la misma clase, {names} {count, plural, one {sí} other {sí}}.',
  'which.kind-not-here':
    'Que sepamos, {told, plural, one {no} other {ninguna de estas}} se vende ni se cultiva aquí ({country}): pide la clase.',
  'which.kinds-not-here':
    'Que sepamos, ningún nombre de estas clases se vende ni se cultiva aquí ({country}): {kinds}. Pide la clase.',
  'which.might': 'Alguna podría, por su nombre: {names}. Prueba unas pocas antes de contar con ellas.',
  'which.alike': 'Igual de buenas aquí: {kinds}.',
  'which.table': 'Clases, cada una en su mejor momento',
  'which.column.rank': 'Puesto',
  'which.column.onion': 'Cebolla',
  'which.column.start': 'Empezar',
  'which.column.neck-fall': 'Se tumban las hojas',
  'which.column.diameter': 'Ancho del bulbo',
  'which.column.good': 'Buenos bulbos',
  'which.column.flower': 'Se espigan',
  'which.column.keeps': 'Se conserva',
  'which.by-name': 'Por su nombre; las de una misma línea son iguales, que se sepa',
  'which.line': '{rank}. {kind}: {names} ({months} meses)',
  'which.kind': '{type}, {start}',
  'which.more':
    '{more, plural, one {Se consideró # más, que quedó} other {Se consideraron # más, que quedaron}} detrás de estas; --limit muestra más.',
  'which.none-else': 'Ninguna otra de las {count} consideradas da buenos bulbos aquí.',
  'which.starts': 'Maneras de empezar {name}',
  'which.column.time': 'En la tierra y en la bandeja',
  'which.column.choice': 'Oferta',
  'which.column.losses': 'Pérdidas',
  'which.column.work': 'Trabajo',
  'which.good-years': '{tenths} de cada 10 años',
  'which.in-flower': '{tenths} de cada 10',
  'which.weeks': '{weeks, plural, one {# semana} other {# semanas}}',
  'which.not-sold': '{start}: no se vende así, que se sepa.',
  'which.known-of': '{start}. {facts}',
  'which.ranking':
    'Ordenadas por la proporción de años buenos, contando {small} los de bulbos pequeños, menos {flower} de la proporción de plantas que se espigan; un bulbo de tamaño completo suma hasta {size}, uno de larga guarda hasta {keeping}; se restan los cuidados de más de cinco meses ({careYear} al año), el aclareo y las bandejas, los bancales demasiado fríos para trabajarlos, las hojas que se tumban con tiempo fresco, y lo que las tiendas rara vez tienen: bulbillos que no son de día largo, clases que pasan el invierno y cebollas de otra latitud. Lo que hacen quienes cultivan en la comarca, donde está publicado, suma {practice}. Lo que se sabe de una cebolla cuenta la mitad, lo usual de su clase la otra mitad. Las que tan pocos años no llegan a distinguir comparten puesto.',
  'which.order':
    'Por orden de lo a menudo que salen buenos bulbos, luego de su tamaño, su conservación y el trabajo; entre iguales va primero lo que hacen quienes cultivan en la comarca.',
  'which.assumed-catalogue':
    'Cebollas probadas: {count, plural, one {#} other {#}} por su nombre, {kinds, plural, one {# distinta} other {# distintas}}, que se sepa; no todas se venden en todas partes.',
  'which.assumed-day': 'Comienzos a partir del {date}, durante un año, semana a semana.',

  'warning.which-sets':
    'De los bulbillos de {size} {store}, se espigan: {plants}. Planta bulbillos de menos de {small} de ancho, o tratados con calor, y come los grandes en verde.',

  'reason.choice-chance':
    'Hay buenos bulbos {goodYearShare}; con las siguientes (cebollas {next}), {nextGoodYearShare}.',
  'reason.choice-flower':
    'Se espigan menos: {boltedPlantShare}; de las siguientes (cebollas {next}), {nextBoltedPlantShare}.',
  'reason.choice-size':
    'Los bulbos se acercan más al tamaño completo, {diameterMm}, que los de las siguientes (cebollas {next}): {nextDiameterMm}.',
  'reason.choice-keeping':
    'Se conserva cerca de {months, plural, one {# mes} other {# meses}}; las siguientes (cebollas {next}), cerca de {nextMonths}.',
  'reason.choice-time':
    'Lista en {weeks, plural, one {# semana} other {# semanas}}; las siguientes (cebollas {next}), en {nextWeeks}.',
  'reason.choice-work': 'Menos trabajo que las siguientes (cebollas {next}).',
  'reason.choice-cold-bed':
    'Va a un bancal que se puede trabajar; las siguientes (cebollas {next}) tendrían que empezar con frío.',
  'reason.choice-drying':
    'Las hojas se tumban cuando hace bastante calor para secar los bulbos; las de las siguientes (cebollas {next}), con tiempo más fresco.',
  'reason.choice-practice':
    'Es lo que hacen quienes cultivan en la comarca; igual de buena que las siguientes (cebollas {next}).',
  'reason.choice-scarce': 'Más fácil de conseguir que las siguientes (cebollas {next}).',
  'reason.choice-usual': 'Algo mejor en todo que las siguientes (cebollas {next}).',
  'reason.choice-last': 'Hay buenos bulbos {goodYearShare}; ninguna otra clase va detrás.',
} as const;
