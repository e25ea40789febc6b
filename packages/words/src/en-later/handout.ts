/** The sheet to hand out: one page for a place. Signs and ways of working are common practice, no source. */
export const handout = {
  'handout.heading': 'Onions for {place}',
  'handout.dateline': '{place, select, none {} other {{place}. }}Worked out on {date}.',
  'handout.buy': 'What to buy',
  'handout.buy.direct-seed': 'Seed of {type} onions, fresh: it keeps for a year or two at most.',
  'handout.buy.raised-seedlings': 'Seed of {type} onions, fresh: it keeps for a year or two at most.',
  'handout.buy.bought-transplants': 'Young plants of {type} onions.',
  'handout.buy.sets': 'Sets of {type} onions, about {size} across, firm and not sprouting.',
  'handout.names': 'Names to look for: {names}.',
  'handout.names.none':
    '{country, select, none {Which names are sold here is not known to us} other {Which names are sold here ({country}) is not known to us}}: ask for the kind.',
  'handout.row.seed':
    'For {length} of row: {count} seeds, thinned to one plant every {apart}; rows {rows} apart.',
  'handout.row.trays':
    'For {length} of row: {count} seeds in trays, set out one plant every {apart}; rows {rows} apart.',
  'handout.row.plants': 'For {length} of row: {count} plants, one every {apart}; rows {rows} apart.',
  'handout.row.sets': 'For {length} of row: {count} sets, one every {apart}; rows {rows} apart.',
  'handout.when': 'When',
  'handout.when.what': 'What',
  'handout.when.middle': 'In a middling year',
  'handout.start.direct-seed': 'Sow in place',
  'handout.start.raised-seedlings': 'Sow in trays',
  'handout.start.bought-transplants': 'Set plants out',
  'handout.start.sets': 'Plant sets',
  'handout.signs': 'How to know it is time',
  'handout.sign.ground':
    'To {from, select, seed {sow} other {plant}}: a handful of ground crumbles, and does not smear.',
  'handout.sign.out':
    'To plant out: seedlings have about {leaves} leaves or have stood for {weeks} weeks, and the bed is at {temperature} or more.',
  'handout.sign.ripe':
    'To lift: necks go soft just above the bulb and tops go over of themselves, about {date}. Wait until more than half are over.',
  'handout.sign.unripe':
    'To lift: in most years necks stay thick here. Lift before the cold stops them, and eat those first.',
  'handout.sign.dry': 'To store: necks are tight and dry right through, and skins rustle.',
  'handout.year': 'The year here',
  'handout.work': 'A year of work',
  'handout.days.from': 'from {date}',
  'handout.work.sow': '{tray, select, yes {Sow in trays} other {Sow in place}}, {depth} deep.',
  'handout.work.prick-out': 'Prick out seedlings that stand crowded.',
  'handout.work.trim': 'Trim the tops of seedlings to about 100 mm, so that they stay stout.',
  'handout.work.harden': 'Harden seedlings off: outdoors, longer each day.',
  'handout.work.plant': 'Plant, {depth} deep.',
  'handout.work.feed':
    'Feed {amounts} of {product}{times, plural, one {} other { each time}}{stop, select, none {} other {; none from {stop} on}}.',
  'handout.work.feed-stop': 'Give no more feed from here on.',
  'handout.work.weed': 'Keep the bed free of weeds.',
  'handout.work.thin': 'Pull every other plant as a spring onion.',
  'handout.work.water':
    'Feel the bed and water it when it is dry{stop, select, none {} other {; none from about {stop} on}}.',
  'handout.work.water-stop': 'Stop watering.',
  'handout.work.flies': 'Keep net or fleece closed: {flies}.',
  'handout.fly.onion': 'onion fly',
  'handout.fly.seedcorn': 'bean seed fly',
  'handout.work.watch-thrips': 'Look between the youngest leaves for thrips.',
  'handout.work.watch-mildew': 'Look for grey fur on leaves: downy mildew.',
  'handout.work.check-tops': 'Look at the tops twice a week.',
  'handout.work.lift': 'Lift, once more than half the tops are over.',
  'handout.work.lift-unripe': 'Lift, whatever the tops do.',
  'handout.work.pull-green': 'Pull as spring onions.',
  'handout.work.dry': 'Dry off, warm and airy and out of the rain.',
  'handout.work.store': 'Clean; take sound bulbs to a dry, cool, airy store.',
  'handout.work.check-store': 'Look through the store, and take out what is soft or sprouting.',
  'handout.caution.rules':
    'Labels and local rules come before this sheet: on sprays, feeds, watering, and moving plants. Local advisers know your ground.',
  'handout.sure': 'How sure, and from where',
  'handout.sources': 'Made with Neckfall {version}. Sources: {sources}.',
} as const;
