/** The year tried week by week. */
export const when = {
  'crop-kind.direct-seed': '{type} onions sown in place',
  'crop-kind.raised-seedlings': '{type} onions sown in trays',
  'crop-kind.bought-transplants': '{type} onions set out as bought plants',
  'crop-kind.sets': '{type} onions from sets',
  'when.windows': '{named, select, yes {{place}: } other {}}{crop} make good bulbs when started {windows}.',
  'when.window': 'from {from} to {to} (best around {best})',
  'when.window-one': 'around {from}',
  'when.any-week':
    '{named, select, yes {{place}: } other {}}{crop} make good bulbs in {good, select, 10 {nearly every year} other {{good} years in 10}}, whichever of the 52 weeks tried they are started in; best around {best}.',
  'when.few':
    '{named, select, yes {{place}: } other {}}{crop} make good bulbs now and then, but from no week of the year often enough to count on.',
  'when.none':
    '{named, select, yes {{place}: } other {}}{crop} make no good bulbs, whichever week of the year they are started in.',
  'when.edge':
    '{way, select, earlier {Started before {date}} other {Started later than {date}}}: {what} {years}. {reason}',
  'when.edge-hindered':
    '{way, select, earlier {Started before {date}} other {Started later than {date}}}: {what}.',
  'when.cold-bed': 'bed too cold for roots',
  'when.long-tray': 'seedlings would stand too long in trays',
  'when.no-sets': 'no sound sets to be had',
  'when.no-plants': 'no plants on sale',
  'when.edge-gamble': 'a gamble, good bulbs',
  'when.table': 'The year tried week by week',
  'when.column.weeks': 'Start',
  'when.column.comes': 'What comes',
  'when.column.good': 'Good bulbs',
  'when.column.neck-fall': 'Tops go over',
  'when.column.diameter': 'Bulb across',
  'when.gamble': 'a gamble',
  'when.good-years': '{range, select, 1 {1 year} other {{range} years}} in 10',
} as const;
