/** El año probado semana a semana. Las clases se dicen detrás de «cebollas». */
export const when = {
  'crop-kind.direct-seed': '{type} en siembra directa',
  'crop-kind.raised-seedlings': '{type} sembradas en semillero',
  'crop-kind.bought-transplants': '{type} de plántulas compradas',
  'crop-kind.sets': '{type} de bulbillos',
  'when.windows':
    '{named, select, yes {{place}: las cebollas {crop} dan} other {{crop}: dan}} buenos bulbos si se empiezan {windows}.',
  'when.window': 'del {from} al {to} (lo mejor, hacia el {best})',
  'when.window-one': 'hacia el {from}',
  'when.any-week':
    '{named, select, yes {{place}: las cebollas {crop} dan} other {{crop}: dan}} buenos bulbos en {good, select, 10 {casi todos los años} other {{good} de cada 10 años}}, sea cual sea de las 52 semanas probadas en la que se empiecen; lo mejor, hacia el {best}.',
  'when.few':
    '{named, select, yes {{place}: las cebollas {crop} dan} other {{crop}: dan}} buenos bulbos de vez en cuando, pero en ninguna semana del año lo bastante a menudo para contar con ello.',
  'when.none':
    '{named, select, yes {{place}: las cebollas {crop} no dan} other {{crop}: no dan}} buenos bulbos, sea cual sea la semana del año en la que se empiecen.',
  'when.edge':
    '{way, select, earlier {Si se empieza antes del {date}} other {Si se empieza después del {date}}}: {what} {years}. {reason}',
  'when.edge-hindered':
    '{way, select, earlier {Si se empieza antes del {date}} other {Si se empieza después del {date}}}: {what}.',
  'when.cold-bed': 'bancal demasiado frío para arraigar',
  'when.long-tray': 'las plántulas estarían demasiado tiempo en bandejas',
  'when.no-sets': 'no se consiguen bulbillos sanos',
  'when.no-plants': 'no hay plántulas a la venta',
  'when.edge-gamble': 'una apuesta, buenos bulbos',
  'when.table': 'El año probado semana a semana',
  'when.column.weeks': 'Empezar',
  'when.column.comes': 'Qué sale',
  'when.column.good': 'Buenos bulbos',
  'when.column.neck-fall': 'Se tumban las hojas',
  'when.column.diameter': 'Ancho del bulbo',
  'when.gamble': 'una apuesta',
  'when.good-years': '{range, select, 1 {1} other {{range}}} de cada 10 años',
} as const;
