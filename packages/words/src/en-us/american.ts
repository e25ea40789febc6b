/** Where American gardeners say something else. */
export const american = {
  'cover.fleece': 'under row cover',
  'buy.bought-transplants': 'buy {type} plants (bundles) and set them out around {date}',
  'where.good': '{place}: {buy}; tops fall around {neckFall}.',
  'where.small': '{place}: expect small bulbs. Best: {buy}; tops fall around {neckFall}.',
  'where.column.neck-fall': 'Tops fall',
  'season.good': '{place}: {crop} make good bulbs {years}; tops fall around {neckFall}.',
  'season.small':
    '{place}: {crop} make small bulbs {years}, about {diameter} across; tops fall around {neckFall}.',
  'season.no-bulb': '{place}: {crop} stay green {years}: no bulbs. Eat them as green onions.',
  'season.row.neck-fall': 'Tops fall',
  'when.column.neck-fall': 'Tops fall',
  'picture.mark.tops': 'tops fall {date}',
  'picture.green': 'no bulb: a green onion',
} as const;
