/** The year tried week by week. */
export const when = {
  'crop-kind.direct-seed': '{type} onions sown in place',
  'crop-kind.raised-seedlings': '{type} onions sown in trays',
  'crop-kind.bought-transplants': '{type} onions set out as bought plants',
  'crop-kind.sets': '{type} onions from sets',
  'when.windows': '{place}: {crop} end in good bulbs when started {windows}; best around {best}.',
  'when.window': 'from {from} to {to}',
  'when.window-one': 'around {from}',
  'when.none': '{place}: {crop} end in good bulbs from no week of the year. Grow {instead} instead.',
  'when.table': 'Started in the week of',
  'when.column.weeks': 'Start',
  'when.column.comes': 'What comes',
  'when.column.good': 'Good bulbs',
  'when.column.neck-fall': 'Tops go over',
  'when.column.diameter': 'Bulb across',
  'when.gamble': 'a gamble',
} as const;
