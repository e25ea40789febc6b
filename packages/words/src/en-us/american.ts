/** Where American gardeners say something else. */
export const american = {
  'cover.fleece': 'under row cover',
  'where.good': '{place}: buy {type} onions, {action}; tops fall around {neckFall}.',
  'where.small':
    '{place}: {type} onions do best, but expect small bulbs: {action}; tops fall around {neckFall}.',
  'where.column.neck-fall': 'Tops fall',
  'season.good': '{place}: {crop} make good bulbs {years}; tops fall around {neckFall}.',
  'season.small':
    '{place}: {crop} make small bulbs {years}, about {diameter} across; tops fall around {neckFall}.',
  'season.no-bulb': '{place}: {crop} stay green {years}: no bulbs. Eat them as green onions.',
  'season.row.neck-fall': 'Tops fall',
  'when.column.neck-fall': 'Tops fall',
  'start.bought-transplants': 'bought plants (bundles)',
} as const;
