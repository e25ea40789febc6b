/** An onion by name, or by what its packet says; own onions in a garden file. */
export const packet = {
  'help.cultivar': 'an onion by name, such as Copra, in place of --class',
  'help.packet-hours': 'hours of day that the packet asks for, {min} to {max}',
  'help.packet-days': 'days to maturity on the packet, {min} to {max}; with --class or --packet-hours',
  'help.garden': 'your garden file: its own onions can be named like any other',

  'error.cultivar-not-modelled':
    '{field} {value}: shallots and multiplier onions grow from bulbs that split, and how they do can’t be told here. Name a bulb onion; `neckfall cultivars` lists all.',
  'error.own-cultivar-bare':
    '{field} {value}: the garden file does not say what day length this onion is for. Add it there, or give --class in place of the name.',
  'error.garden-missing': '{field} {value}: there is no such file. Expected a garden file (*.neckfall.json).',
  'error.garden-unreadable':
    '{field} {value} could not be read ({reason}). Expected a file that you may read.',
  'error.garden-refused':
    '{field} {value} is no JSON ({reason}). Expected a garden file, written as one JSON document; restore a copy or mend it there.',
  'error.garden-too-deep':
    '{field} {value} is nested more than {levels} levels deep. Expected a garden file; restore a copy.',
  'clash.cultivar-has-class': 'an onion’s name says what it is.',

  'garden.changed': '{field} {file}: {change}',
  'garden.changed-more': '{field} {file}: {count, number} more changes like these.',
  'garden.change.not-a-garden': 'this is no garden; taken as an empty one.',
  'garden.change.schema': 'schema is "{found}", expected "neckfall/garden@1"; read all the same.',
  'garden.change.newer': 'written by a later version ({found}); what is known here was read.',
  'garden.change.list-replaced': '{path} is no list ({found}); taken as empty.',
  'garden.change.entry-dropped': '{path} can’t be used ({found}) and was left out.',
  'garden.change.named': '{path} is missing; named by its number.',
  'garden.change.id-given': '{path} "{found}" is missing or used twice; a new one was given.',
  'garden.change.emptied': '{path} {found} is not what was expected and was left empty.',

  'assumed.cultivar': '{name} is taken as {type}: {traits}.',
  'packet.hours-taken':
    'A packet that asks for {hours} of day is taken as {type}: bulbs start from {photoperiod} on, dawn to dusk.',
  'packet.hours-bounded':
    'No {type} onion asks for {hours} of day: taken as the nearest that may, whose bulbs start from {photoperiod} on, dawn to dusk.',
  'packet.days-taken':
    '{days} days on the packet are taken as counted from here: {start}, {date}. The usual {type} onion takes {modelDays}, so this one ripens {pace}.',
  'packet.days-bounded':
    '{days} days on the packet fit no season here: counted from {start}, {date}, the usual {type} onion takes {modelDays}. Taken as one that ripens {pace}.',
  'packet.days-unused': '{days} days on the packet say nothing here, where no {type} onion ripens.',
  'packet.sooner': '{percent}% sooner',
  'packet.later': '{percent}% later',
  'packet.as-usual': 'as usual',
} as const;
