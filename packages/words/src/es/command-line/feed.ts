/** `neckfall feed` se explica. */
export const feedOptions = {
  'help.feed':
    'Cuánto nitrógeno pide un cultivo además de lo que da su bancal, en abonados de tu propio abono, y cuándo parar.',
  'help.feed.product':
    'con qué abonas: los números del saco, como 10-10-10, o {organic} (si no se dice: 10-10-10)',
  'help.feed.soil':
    'textura, lo que da el suelo (poor, ordinary o rich), o ambos con una coma: --soil sand,poor (si no se dice: loam,ordinary)',
  'help.feed.aim':
    'la cosecha que buscas, en kg por m², de {min} a {max} (si no se dice: la que dan aquí estas cebollas)',
  'help.feed.bed-m2': 'tamaño del bancal, en m², para las cantidades de todo el bancal',
  'help.feed.compost':
    'compost enterrado para este cultivo, en kg por m², de {min} a {max} (si no se dice: ninguno)',
  'help.feed.after-legume': 'antes hubo allí guisantes, judías o trébol',
  'help.feed.ph': 'pH del suelo, de {min} a {max}, para saber de la cal',
  'error.feed-product':
    '--product {value}: se esperaban los tres números del saco, como 10-10-10 (con algo de nitrógeno y 100 como mucho entre los tres), o {expected}.{near, plural, =0 {} other { Lo más parecido: {nearest}.}}',
  'error.feed-soil':
    '--soil {value}: se esperaba una textura, una de poor, ordinary y rich, o una de cada con una coma, como --soil sand,poor.{near, plural, =0 {} other { Lo más parecido: {nearest}.}}',
} as const;
