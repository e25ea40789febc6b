/** El abono en la página de la temporada. */
export const appFeed = {
  'app.feed': 'Abono',
  'app.feed.product': 'Con qué abonas',
  'app.feed.product.hint':
    'Los tres números del saco, como 10-10-10, o un nombre, como harina de sangre.{bed, select, none {} other { Se guarda con el bancal «{bed}».}}',
  'app.feed.product.bad':
    '«{value}» no es un abono conocido aquí. Da tres números como 10-10-10, con algo de nitrógeno y 100 como mucho entre los tres, o elige un nombre de la lista.',
  'app.feed.grounds': 'En qué se basa',
  'app.feed.sources': 'Fuentes: {sources}.',
} as const;
