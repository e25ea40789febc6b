/** What an American gardener says otherwise when places are set beside each other. */
export const americanTogether = {
  'together.line':
    '{crop}, begun {date}: bulbs start {onset}, tops fall {tops}, {size} across; {verdict} {years}.',
  'together.line.unripe':
    '{crop}, begun {date}: bulbs start {onset}, but tops do not fall; {verdict} {years}.',
  'together.on.over': 'tops fallen, the bulb {across} across',
  'together.stage.over': 'tops fallen',
  'together.column.tops': 'Tops fall',
  'app.together.dots':
    'Dots on the ground: begun, days and size enough, bulbs start, tops fall; behind them, where 8 years in 10 fall.',
} as const;
