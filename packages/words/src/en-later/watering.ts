/** What a crop asks of water: today, till its tops fall, and in a whole season. */
export const watering = {
  'watering.title': 'Watering',
  'watering.rain-alone': 'These grow on rain alone; this is what watering them would take.',
  'watering.now':
    'Water today: {onArea}{isBed, select, yes {, {bed} for the whole bed} other {}}{minutes, plural, =0 {} one {, about one minute of the {way, select, drip {line} other {hose}}} other {, about # minutes of the {way, select, drip {line} other {hose}}}}.',
  'watering.now-why': 'The bed is short of {short} of water, and onions feel it from {readily} on.',
  'watering.not-yet':
    'No need to water today: the bed is short of {short} of water, and onions feel it from {readily} on.',
  'watering.full': 'No need to water today: the bed has all it can hold.',
  'watering.lasts': 'That lasts until about {date} ({range}).',
  'watering.due': 'Water next about {date} ({range}).',
  'watering.due-some': 'Rain may do: the bed asks for water again {years}, about {date} ({range}).',
  'watering.rain-does': 'Rain does for the rest.',
  'watering.before': 'Nothing to water yet: these go into their bed about {date}.',
  'watering.first': 'The first watering is due about {date} ({range}).',
  'watering.stop':
    'Stop when the first tops begin to fall, about {date} ({range}): bulbs ripen in dry ground.',
  'watering.stopped': 'Water no more: about now the first tops begin to fall, and bulbs ripen in dry ground.',
  'watering.lifted': 'Water no more: these came out of the ground on {date}.',
  'watering.nothing-stands': 'From this start no onion comes to stand here, so there is nothing to water.',
  'watering.table': 'What a season takes',
  'watering.column.ordinary': 'Ordinary year',
  'watering.column.dry': 'Dry year',
  'watering.row.need': 'To give in all',
  'watering.row.need-bed': 'For the whole bed',
  'watering.row.rain': 'Rain meanwhile',
  'watering.row.given': 'Given so far, with what is to come',
  'watering.dry-year': 'A dry year is the driest of ten.',
  'watering.salt':
    'Salt in this water leaves about {percent} % of the crop. The amounts are {leaching} % larger, to wash it down.',
  'watering.salt-harmless':
    'Onions bear the salt in this water{leaching, select, 0 {} other {, as long as it is washed down: the amounts are {leaching} % larger for it}}.',
  'watering.days': 'Week by week, in an ordinary year',
  'watering.day.from': 'Week from',
  'watering.day.rain': 'Rain',
  'watering.day.given': 'Given',
  'watering.day.short': 'Short at its end',
  'watering.assumed.way':
    'Of the water {way, select, drip {from the line} can {from the can} other {from the hose}}, {percent} % reaches the roots; the rest runs beside or dries off.',
  'watering.assumed.bed':
    'The bed was moist right through when the crop went in; nothing runs off it, nothing rises into it.',
  'watering.assumed.method':
    'Water is reckoned day by day for crop and bare ground apart, as FAO Irrigation and Drainage Paper 56 (1998) has it. Watering for good ends {days} days before half the tops are down.',
  'watering.assumed.watered-when-due':
    'No watering is noted, so the bed is taken to have had its water when it was due until {days} days ago, and none since. Note what you give, and this goes by it.',
  'watering.assumed.watered-till-noted':
    'Until the first watering noted, the bed is taken to have had its water when it was due.',
  'watering.assumed.noted-filled':
    'The size of the bed is not known, so each watering noted is taken to have filled it.',
  'watering.caution.rules': 'Keep to local rules on hoses, and on taking water from streams and wells.',
  'watering.caution.grey':
    'No waste water from the house and no reclaimed water on onions that are eaten raw; follow local rules.',
  'watering.caution.salt':
    'Salty water and water from a softener harm onions: have well water tested for salt.',
  'watering.area': 'Size of the bed, {unit, select, inch {square feet} other {m²}}',
  'watering.area.hint': 'Left empty: amounts for each {unit, select, inch {square foot} other {m²}} alone.',
  'watering.butt': 'Water butt or rain barrel, {unit, select, inch {gallons} other {l}}',
  'watering.butt.hint': 'What it holds when full; with the size of the bed it is told how far that goes.',
  'watering.butt.is': 'An ordinary year takes {ordinary} of them full, a dry year {dry}.',
  'watering.butt.enough': 'One full does for an ordinary year; a dry year takes {dry}.',
  'watering.butt.plenty': 'One full does even for a dry year.',
} as const;
