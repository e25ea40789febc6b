/**
 * What was behind it, as a headline, and what to do otherwise next year. Years without onions: purple blotch three (OMAFRA
 * IPM), downy mildew over three (INRA HYPP), pink root three to six (PNW Plant Disease Handbook), white rot over twenty (UC
 * IPM). All else is common practice of growers, no source.
 */
export const whyCauses = {
  'why.cause.days-too-short': 'The days never got long enough for this kind',
  'why.advice.days-too-short':
    'Grow a kind for your latitude, one that starts bulbs on shorter days. Another day of sowing does not help.',
  'why.cause.type-too-late': 'This kind is too late for your place',
  'why.advice.type-too-late': 'Grow an earlier kind, or give this one a head start from plants or sets.',
  'why.cause.type-too-early': 'This kind began its bulbs before it had leaves enough',
  'why.advice.type-too-early':
    'Grow a kind that waits for longer days: it makes more leaves first, and leaves make the bulb.',
  'why.cause.started-too-late': 'You started too late',
  'why.advice.started-too-late':
    'Start earlier; where the bed is not fit in time, start in trays, or with bought plants or sets.',
  'why.cause.cold-on-large-plants': 'Cold turned big plants to flower',
  'why.advice.cold-on-large-plants':
    'Let them meet the cold with stems thinner than a pencil: sow or plant later. Choose a kind that is slow to flower.',
  'why.cause.large-sets': 'The sets were too large',
  'why.advice.large-sets': 'Plant smaller sets. Pick the large ones out and pull those green.',
  'why.cause.cold-stored-sets': 'The sets were stored cold before planting',
  'why.advice.cold-stored-sets':
    'Ask for sets that were stored warm, or keep yours in a warm, airy room until you plant them.',
  'why.cause.heat': 'Heat cut the bulbs short',
  'why.advice.heat':
    'Start earlier, so that bulbs fill before the worst heat. Mulch the bed and keep it moist.',
  'why.cause.cool-season': 'The season was too cool',
  'why.advice.cool-season':
    'Grow an early kind, start it in trays or as sets, and choose your warmest bed. A tunnel in spring helps too.',
  'why.cause.thirst': 'The bed was too dry',
  'why.advice.thirst':
    'Onions root shallow: water before the top of the bed dries out, above all while bulbs swell.',
  'why.cause.crowding': 'They stood too close',
  'why.advice.crowding': 'Give each more room, or pull every other one as a green onion before bulbs begin.',
  'why.cause.shade': 'They had too little sun',
  'why.advice.shade': 'Give them the sunniest bed you have; onions stand no shade.',
  'why.cause.winter-cold': 'Winter was too hard for them',
  'why.advice.winter-cold':
    'Cover them before hard frost, grow a kind that is meant to stand the winter, or start in spring.',
  'why.cause.cold-soil': 'The soil was too cold for the seed',
  'why.advice.cold-soil': 'Wait until the bed stays at {temp} or more, or start in trays under cover.',
  'why.cause.warm-store': 'The store was too warm',
  'why.advice.warm-store':
    'Keep them as cold as you can without frost: a cold cellar or shed, not a kitchen. Eat what must stay warm first.',
  'why.cause.damp-store': 'The store was too damp',
  'why.advice.damp-store':
    'Keep them where air moves and skins stay crisp: in nets, strings or shallow trays, never in bags.',
  'why.cause.short-keeper': 'This kind does not keep long',
  'why.advice.short-keeper': 'Grow a storage kind for the winter, and eat this one in its first months.',
  'why.cause.frozen-store': 'They froze in store',
  'why.advice.frozen-store':
    'Cover them with sacks or straw in hard frost, or bring them in. Keep them off cold walls and floors.',
  'why.cause.lifted-unripe': 'They were harvested before they were ripe',
  'why.advice.lifted-unripe':
    'Wait until more than half the tops are down by themselves, then dry the bulbs until necks are tight.',
  'why.cause.wrong-seed': 'The seed was not the kind you took it for',
  'why.advice.wrong-seed':
    'Sow a named kind from a fresh packet. Seed saved from a hybrid, or swapped, may be anything.',
  'why.cause.hunger': 'They were short of food',
  'why.advice.hunger':
    'Feed the bed before planting and again while leaves grow. Stop as bulbs begin. A soil test tells how much.',
  'why.cause.late-nitrogen': 'They were fed too late or too much',
  'why.advice.late-nitrogen': 'Give nitrogen early, in small amounts, and none once bulbs begin.',
  'why.cause.weeds': 'Weeds took their light and water',
  'why.advice.weeds':
    'Weed from the second leaf on, every week or two, until bulbs swell. Later weeds do little harm.',
  'why.cause.salt': 'There was too much salt in soil or water',
  'why.advice.salt':
    'Use rain water or other good water, above all while plants are small, and wash salt down before sowing.',
  'why.cause.uneven-water': 'Dry spells alternated with soakings',
  'why.advice.uneven-water': 'Keep the bed evenly moist from the third leaf on, and mulch it.',
  'why.cause.spring-cold-snap': 'A cold snap hurt the young plants',
  'why.advice.spring-cold-snap': 'Cover young plants on cold nights, or plant out a little later.',
  'why.cause.old-seed': 'The seed was old',
  'why.advice.old-seed':
    'Buy fresh onion seed each year, or test a pinch of it in a damp cloth before you sow.',
  'why.cause.dry-seedbed': 'The seedbed dried out or crusted over',
  'why.advice.dry-seedbed':
    'Water before you sow and keep the top moist until seedlings stand. Sow no deeper than {depth} under loose soil.',
  'why.cause.damping-off': 'Fungi in wet soil killed the seedlings',
  'why.advice.damping-off': 'Use clean trays and fresh mix, sow thinly, give light and air, and water less.',
  'why.cause.birds-or-cutworms': 'Birds or cutworms took them',
  'why.advice.birds-or-cutworms':
    'Put a net over the bed from the first day. Look for cutworms with a lamp at night, and keep weeds down before planting.',
  'why.cause.onion-fly': 'Grubs of the onion fly ate them',
  'why.advice.onion-fly':
    'Plant far from this year’s bed and cover it with fine net before the flies come. Dig no fresh manure in.',
  'why.cause.thrips': 'Thrips sucked the leaves dry',
  'why.advice.thrips':
    'Keep plants well watered, keep weeds down, and look between the youngest leaves each week from spring on.',
  'why.cause.downy-mildew': 'Downy mildew took the leaves',
  'why.advice.downy-mildew':
    'Plant no onions in that bed for four years. Give them wind and room, water the ground only, and buy clean sets.',
  'why.cause.purple-blotch': 'Purple blotch took the leaves',
  'why.advice.purple-blotch':
    'Plant no onions in that bed for three years, clear all dead leaves, and give them room so that leaves dry fast.',
  'why.cause.leaf-blight': 'Leaf blight took the leaves',
  'why.advice.leaf-blight':
    'Give them wind and room, water the ground early in the day, and clear all dead leaves.',
  'why.cause.pink-root': 'Pink root took the roots',
  'why.advice.pink-root':
    'Plant onions there again after six years at the soonest, or grow a kind that resists pink root.',
  'why.cause.white-rot': 'White rot is in the soil',
  'why.advice.white-rot':
    'Plant no onions, garlic or leeks in that ground again: it lasts there for twenty years and more. Clean tools and boots.',
  'why.cause.basal-rot': 'Rot came up from the base',
  'why.advice.basal-rot':
    'Plant no onions there for four years, take care not to wound roots, and store none with a soft base.',
  'why.cause.bacterial-rot': 'Bacteria rotted the bulbs',
  'why.advice.bacterial-rot':
    'Water the ground and not the tops once bulbs swell, stop as tops fall, handle bulbs gently, and dry them fast.',
  'why.cause.neck-rot-mould': 'Neck rot came in through green necks',
  'why.advice.neck-rot-mould':
    'Harvest ripe and in dry weather, dry until necks are tight, and cut no top before that.',
  'why.cause.black-mould': 'Black mould grew on them',
  'why.advice.black-mould': 'Dry them fast, do not bruise them, and keep them cool and dry.',
  'why.cause.ozone': 'Bad air burnt the leaves',
  'why.advice.ozone': 'There is no cure. Keep the bed moist on hot, hazy days; some kinds bear it better.',
  'why.cause.wind': 'Wind or hail broke the leaves',
  'why.advice.wind': 'Give them a hedge or a net on the windy side, or a kind with shorter tops.',
  'why.cause.light-on-bulbs': 'Light reached the bulbs',
  'why.advice.light-on-bulbs':
    'Plant a little deeper in loose soil, and dry and store them out of the light.',
  'why.cause.sun-on-lifted-bulbs': 'Hot sun scalded bulbs out of the ground',
  'why.advice.sun-on-lifted-bulbs':
    'In hot weather dry them in the shade, or lay the tops of one row over the bulbs of the next.',
  'why.cause.badly-dried': 'They went into store before they were dry',
  'why.advice.badly-dried':
    'Dry them in one layer, with air above and below, until necks are tight and skins rustle.',
  'why.cause.knocked-about': 'They were knocked about',
  'why.advice.knocked-about': 'Lay bulbs down and do not throw them, and eat bruised ones first.',
  'why.cause.hot-kind': 'This is a hot kind',
  'why.advice.hot-kind':
    'Grow a kind sold as mild or sweet, keep it well watered, and eat it within its first months.',
  'why.cause.nothing-wrong': 'Nothing went wrong: onions do this',
  'why.advice.nothing-wrong': 'Do the same again.',
} as const;
