/** Una cebolla por su nombre, o por lo que dice su sobre; cebollas propias en un archivo de huerto. */
export const packet = {
  'help.cultivar': 'una cebolla por su nombre, por ejemplo Copra, en lugar de --class',
  'help.packet-hours': 'horas de día que pide el sobre, de {min} a {max}',
  'help.packet-days': 'días hasta la madurez según el sobre, de {min} a {max}; con --class o --packet-hours',
  'help.garden': 'tu archivo de huerto: sus cebollas propias se pueden nombrar como cualquier otra',

  'error.cultivar-not-modelled':
    '{field} {value}: las chalotas y las cebollas multiplicadoras crecen de bulbos que se dividen, y aquí no se puede decir cómo les va. Nombra una cebolla de bulbo; `neckfall cultivars` las muestra todas.',
  'error.own-cultivar-bare':
    '{field} {value}: el archivo del huerto no dice para qué duración del día es esta cebolla. Añádelo allí, o da --class en lugar del nombre.',
  'error.garden-missing':
    '{field} {value}: no existe ese archivo. Se esperaba un archivo de huerto (*.neckfall.json).',
  'error.garden-unreadable':
    '{field} {value} no se pudo leer ({reason}). Se esperaba un archivo que puedas leer.',
  'error.garden-refused':
    '{field} {value} no es JSON ({reason}). Se esperaba un archivo de huerto, escrito como un documento JSON; recupera una copia o corrígelo ahí.',
  'error.garden-too-deep':
    '{field} {value} tiene más de {levels} niveles anidados. Se esperaba un archivo de huerto; recupera una copia.',
  'clash.cultivar-has-class': 'el nombre de una cebolla ya dice qué es.',

  'garden.changed': '{field} {file}: {change}',
  'garden.changed-more': '{field} {file}: {count, number} cambios más como estos.',
  'garden.change.not-a-garden': 'esto no es un huerto; se tomó como uno vacío.',
  'garden.change.schema': 'schema es "{found}" y se esperaba "neckfall/garden@1"; se leyó de todos modos.',
  'garden.change.newer': 'lo escribió una versión posterior ({found}); se leyó lo que aquí se conoce.',
  'garden.change.list-replaced': '{path} no es una lista ({found}); se tomó como vacía.',
  'garden.change.entry-dropped': '{path} no se puede usar ({found}) y se dejó fuera.',
  'garden.change.named': 'falta {path}; recibió su número por nombre.',
  'garden.change.id-given': '{path} "{found}" falta o se usa dos veces; se le dio otro.',
  'garden.change.emptied': '{path} {found} no es lo que se esperaba y quedó vacío.',

  'assumed.cultivar': '{name} se toma como cebolla {type}: {traits}.',
  'packet.hours-taken':
    'Un sobre que pide {hours} de día se toma como cebolla {type}: los bulbos empiezan a partir de {photoperiod}, del alba al anochecer.',
  'packet.hours-bounded':
    'Ninguna cebolla {type} pide {hours} de día: se toma la más cercana posible, cuyos bulbos empiezan a partir de {photoperiod}, del alba al anochecer.',
  'packet.days-taken':
    'Los {days} días del sobre se toman como contados desde aquí: {start}, {date}. La cebolla {type} usual tarda {modelDays}, así que esta madura {pace}.',
  'packet.days-bounded':
    'Los {days} días del sobre no encajan con ninguna temporada de aquí: contados desde {start}, {date}, la cebolla {type} usual tarda {modelDays}. Se toma como una que madura {pace}.',
  'packet.days-unused': 'Los {days} días del sobre no dicen nada aquí, donde ninguna cebolla {type} madura.',
  'packet.sooner': 'un {percent} % antes',
  'packet.later': 'un {percent} % después',
  'packet.as-usual': 'como es usual',
} as const;
