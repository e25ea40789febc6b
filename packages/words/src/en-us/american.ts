/** Where American gardeners say something else. */
export const american = {
  'date.day': '{month} {day}',
  'date.day-with-year': '{month} {day}, {year}',
  'date.range-in-month': '{month} {from}\u2009–\u2009{to}',
  'month-short.9': 'Sep',
  'list.and': '{before}, and {last}',
  'list.or': '{before}, or {last}',
  'country.BL': 'St. Barthélemy',
  'country.KN': 'St. Kitts & Nevis',
  'country.LC': 'St. Lucia',
  'country.MF': 'St. Martin',
  'country.PM': 'St. Pierre & Miquelon',
  'country.SH': 'St. Helena',
  'country.UM': 'U.S. Outlying Islands',
  'country.VC': 'St. Vincent & Grenadines',
  'country.VI': 'U.S. Virgin Islands',
  'cover.fleece': 'under row cover',
  'buy.bought-transplants': 'buy {type} plants (bundles) and set them out around {date}',
  'buy-head.bought-transplants': 'Buy {type} plants (bundles) and set them out around {date}',
  'where.good': '{place}: {buy}; tops fall around {neckFall}.',
  'where.small':
    '{place}: expect small bulbs{among, select, list { of these} other {}}. Best: {buy}; tops fall around {neckFall}.',
  'where.small-but':
    '{place}: {buy}, but expect small bulbs; tops fall around {neckFall}. Good ones are likelier if you {better}: {betterYears}.',
  'where.column.neck-fall': 'Tops fall',
  'season.good': '{place}: {crop} make good bulbs {years}; tops fall around {neckFall}.',
  'season.small':
    '{place}: {crop} make small bulbs {years}, about {diameter} across; tops fall around {neckFall}.',
  'season.no-bulb': '{place}: {crop} stay green {years}: no bulbs. Eat them as green onions.',
  'season.row.neck-fall': 'Tops fall',
  'when.column.neck-fall': 'Tops fall',
  'which.column.neck-fall': 'Tops fall',
  'reason.choice-drying':
    'Tops fall while it is warm enough to cure bulbs; those of the next best, {next}, do so in cooler weather.',
  'how.span.parts':
    '{some, select, some {8 in 10 of the years with a crop} other {8 years in 10}} have tops falling within {days} and bulbs within {size} of each other. {rest, select, none {The weather of the year alone makes that.} other {The weather of the year alone would make that about {weatherDays} and {weatherSize}; what is not known of this onion makes the rest.}}',
  'how.span.lead':
    'The crop named first has tops falling {dates} and bulbs of {sizes} in {some, select, some {8 in 10 of the years with a crop} other {8 years in 10}}.',
  'how.span.best-start':
    'The best start has tops falling {dates} and bulbs of {sizes} in {some, select, some {8 in 10 of the years with a crop} other {8 years in 10}}.',
  'how.end.later': 'they fall about {days} later',
  'how.end.sooner': 'they fall about {days} sooner',
  'how.end.same': 'they fall on about the same day',
  'how.end.not-ripe': 'they do not fall in time',
  'picture.mark.tops': 'tops fall {date}',
  'picture.green': 'no bulb: a green onion',
  'app.where.kind.good':
    '{buy}. Bulbs start around {onset}, tops fall around {neckFall}; good bulbs {years}.',
  'app.welcome.lead':
    'Name a town. You get the onion that suits it, when to start it and when its tops fall, worked out here on your device.',
  'app.where.winter.some':
    'Mostly: of plants sown in fall frost takes {lost}, in a hard winter {hard}. Row cover helps ({fleece} lost).',
  'app.where.winter.mild':
    'Yes: of plants sown in late summer or fall, frost takes hardly any, even without a cover.',
  'app.where.winter.fleece': 'Not in the open ({lost} lost); under row cover frost takes {fleece}.',
  'app.where.winter.no':
    'No: frost takes {lost} of those sown in fall, and {fleece} even under row cover. Start in spring.',
  'week.green': 'No bulbs will come of these. Pull them as green onions once they are thick as a pencil.',
  'week.dry': '{water, select, rain {Let} other {Stop watering, and let}} the tops fall by themselves.',
  'week.lift':
    'When more than half the tops are down, pull on a dry day and lay the bulbs to cure, out of the wet.',
  'week.over': 'These are over by now: pulled and in store.',
  'see.fallen': 'Tops are down by now {years}.',
  'tops.ahead': 'Tops fall about {date} ({range}).',
  'tops.some':
    'Tops fall about {date} ({range}), {years}. In the other years {otherwise, select, neck {they stay up and necks stay thick} bulb {no bulbs form} winter {winter takes the plants} other {they stay up}}.',
  'words.tops': 'Tops fall',
  'words.tops.is': 'Necks soften and leaves fall: the onions have finished, and can soon be pulled.',
  'tops.past': 'Tops fell about {date} ({range}).',
  'app.which.coarse': '{kind}: start around {date}; tops fall around {neckFall}.',
  'app.which.row.neck-fall': 'Tops fall, 8 years in 10',
  'app.which.packet.good': '{place}: yes, {name} suits. {buy}; tops fall around {neckFall}.',
  'app.which.packet.mostly':
    '{place}: {name} may do: good bulbs {years}. {buy}; tops fall around {neckFall}.',
  'app.which.packet.small': '{place}: {name} stays small here. Best: {buy}; tops fall around {neckFall}.',
} as const;
