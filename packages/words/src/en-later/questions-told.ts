/** What the ten questions are answered with. */
export const questionsTold = {
  'question.never.stranger':
    '{place}: most likely it was an onion for another latitude. {kind} ones make no bulb here {years}.',
  'question.never.waits':
    'They begin bulbs only on days well over {needed}, and your longest day has {longest}: no feeding and no earlier sowing helps that.',
  'question.never.late':
    '{place}: most likely it was sown too late. Seed of {kind} onions sown about {date} or later in the summer {end, select, winter {comes to no ripe bulb before winter takes it,} other {makes no bulb that year}} {years}.',
  'question.never.late-too':
    'A late sowing fails too: seed of {kind} onions sown about {date} or later in the summer {end, select, winter {comes to no ripe bulb before winter takes it,} other {makes no bulb that year}} {years}.',
  'question.never.place':
    '{place}: most likely it was the place. Hardly any bulb onion does well in open ground here, whenever it is started.',
  'question.never.place-best': 'The best of all that was tried: {crop}. Good bulbs come {years}.',
  'question.never.place-instead': 'Grow {instead} instead.',
  'question.never.shade':
    '{place}: each kind makes bulbs here whenever people sow it, so it was most likely shade, or seed of an unknown kind.',
  'question.never.young':
    'A plant has to be old enough, and the days long enough, at the same time; what is sown late meets shortening days.',
  'question.never.own': 'What does well: {crop}. Good bulbs come {years}, about {size} across.',
  'question.never.look': 'Deep shade, and much nitrogen late, keep plants green too.',

  'question.late.head':
    '{place}: {still, select, yes {no, not yet} never {the date is not what matters} other {yes, for now}}. {today}',
  'question.late.now': 'Begun now or soon, {crop} come good {years}, ripe about {ripe}.',
  'question.late.best': 'The best of the year: {crop}. Good bulbs come {years}.',

  'question.small.head':
    '{place}: of the usual faults, {cause} costs most here: bulbs of {small} instead of {own}.',
  'question.small.poor': '{place}: they stay small here whatever you do, about {own} across.',
  'question.small.none':
    '{place}: none of the usual faults makes them much smaller here than {own}; look for hunger, weeds or sick roots.',
  'question.small.cause.late': 'a start {weeks} weeks late',
  'question.small.cause.crowded': 'crowding at {density}',
  'question.small.cause.unwatered': 'leaving the bed to the rain',
  'question.small.cause.shaded': 'shade with {hours} hours of sun',
  'question.small.cause.other-kind': 'growing {kind} onions',
  'question.small.worse': 'What makes them smaller still: {others}.',
  'question.small.item': '{cause} ({size})',
  'question.small.others': 'Then {count, plural, one {comes} other {come}} {others}.',
  'question.small.own': 'All done well: {crop}. About {size} across, good bulbs {years}.',
  'question.small.leaves':
    'A bulb grows from the leaves that stand when it begins, {leaves, plural, one {about # leaf} other {about # leaves}} when all goes well: whatever costs leaves before that costs size.',

  'question.sets.head':
    '{place}: most likely they are large. Of sets {large} across from a cold store, {many} flower; of sets of {small}, {few}.',
  'question.sets.seldom':
    '{place}: here even large sets seldom flower: of those {large} across from a cold store, {many} do; of sets of {small}, {few}.',
  'question.sets.warm': 'Large ones kept in a warm room until planting: {some} flower.',
  'question.sets.why':
    'An onion flowers in its second year, and a large set that has lain cold takes that cold for its winter; a small one is still too young for that.',
  'question.sets.undone': 'Warm days after planting undo what the cold of a store has done.',
  'question.sets.do':
    'Buy sets no wider than {small}. Plant larger ones apart and pull them green, and eat first what flowered.',
  'question.sets.when': 'Reckoned for {crop}.',

  'question.kitchen.head':
    '{place}: not for bulbs. Of kitchen onions planted, {many} flower. Let them sprout and cut the green.',
  'question.kitchen.why':
    'To the plant a kitchen onion is a very large set that has had its winter. Even of one {size} across, smaller than any you would buy, {cold} flower after a cold store and {warm} after a warm one; of sets of {small}, {few}.',
  'question.kitchen.limit':
    'No trial of kitchen bulbs is behind this: sets were tried up to about {tried}, and larger ones flowered more.',
  'question.kitchen.green': 'Planted about {date}, the green shows in about {days} days.',
  'question.kitchen.seed':
    'Seed of one that flowers is of a kind nobody knows, and from a hybrid it comes mixed.',
  'question.kitchen.caution.rot':
    'Kitchen onions may carry white rot, which stays in the ground for twenty years and more: never plant them in clean ground. Use a pot, and put its soil in the rubbish.',
  'question.kitchen.caution.soft': 'Plant and eat none that is soft, wet or mouldy: throw it away whole.',
  'question.kitchen.caution.treated':
    'Some are treated so that they do not sprout; leave those that stay still.',

  'question.abroad.head': '{place}: {kinds}.',
  'question.abroad.both':
    '{ending, select, good {onions of the tropics and of the far north will both do here} gamble {onions of the tropics and of the far north are both a gamble here} small {onions of the tropics and of the far north both stay small here} bare {neither onions of the tropics nor of the far north make bulbs here} other {onions of the tropics and of the far north both do badly here}}: of the first, good bulbs come {tropics}; of the second, {north}',
  'question.abroad.good':
    '{from, select, tropics {an onion of the tropics} other {an onion of the far north}} will do here (good bulbs {years})',
  'question.abroad.gamble':
    '{from, select, tropics {an onion of the tropics} other {an onion of the far north}} is a gamble here (good bulbs {years})',
  'question.abroad.small':
    '{from, select, tropics {an onion of the tropics} other {an onion of the far north}} stays small here (about {size}, good bulbs {years})',
  'question.abroad.no-bulb':
    '{from, select, tropics {an onion of the tropics} other {an onion of the far north}} makes no bulb here {bare}',
  'question.abroad.poor':
    '{from, select, tropics {an onion of the tropics} other {an onion of the far north}} does badly here (good bulbs {years})',
  'question.abroad.early':
    'Onions of the tropics begin bulbs once days pass about {needed}: here that comes while plants are still young.',
  'question.abroad.early-enough':
    'Onions of the tropics begin bulbs once days pass about {needed}; started about {date} they have leaves enough by then.',
  'question.abroad.waits':
    'Onions of the far north begin bulbs only on days well over {needed}; your longest has {longest}.',
  'question.abroad.own': 'The onion for here: {crop}. About {size} across, good bulbs {years}.',
  'question.abroad.ask':
    'Ask your friend how long the days are there in midsummer, or what the packet says, and look it up under Which.',
  'question.abroad.caution':
    'Seed, sets and bulbs may not cross many borders without papers, and bulbs bring sickness along: ask your plant health service before any are sent.',

  'question.autumn.yes':
    '{place}: yes. Sow {kind} seed in the bed about {date}: good bulbs {years}, ripe about {ripe}.',
  'question.autumn.tropics':
    '{place}: there is no winter here to sow before. Sown in the bed, {kind} seed does best about {date}: good bulbs {years}.',
  'question.autumn.winter':
    '{place}: better not. Even of the best sowing, about {date}, frost takes the crop {killed}.',
  'question.autumn.no':
    '{place}: better not. {kind} seed sown about {date} gives good bulbs {years}; sown about {spring}, {springYears}.',
  'question.autumn.sooner':
    'That is {weeks, plural, one {# week} other {# weeks}} before those of seed sown about {spring}, which come good {springYears}.',
  'question.autumn.same':
    'They are ripe about when those of seed sown about {spring} are, which come good {springYears}.',
  'question.autumn.spring': 'Seed sown about {spring} comes good {springYears}, about {springSize} across.',
  'question.autumn.frost': 'Frost takes {middle} in a middling winter, {hard} in a hard one.',
  'question.autumn.fleece': 'Under fleece good bulbs come {years}.',
  'question.autumn.flower':
    'Don’t sow weeks sooner: plants as thick as a pencil when the cold comes flower the next year. Of these, {some} do.',

  'question.indoors.head':
    '{place}: from about {first}, and best about {best}. {way, select, bigger {Early sowing does make bigger bulbs} other {Earlier does not make bigger bulbs}}: {firstSize} sown first, {bestSize} sown best.',
  'question.indoors.any':
    '{place}: at any time of the year, and best about {best}, for bulbs of about {bestSize}: your days hardly change.',
  'question.indoors.none':
    '{place}: no sowing of {kind} seed in trays comes good often enough here; buy plants or sets.',
  'question.indoors.odds': 'Good bulbs come {firstYears} from the first sowing, {bestYears} from the best.',
  'question.indoors.odds-same': 'Good bulbs come {bestYears}, from the first sowing as from the best.',
  'question.indoors.last':
    'Until about {last} it is still in time, for bulbs of about {lastSize}, good ones {lastYears}.',
  'question.indoors.bed': 'Sown in the bed about {date} they come to {size}, good ones {years}.',
  'question.indoors.flower': 'Of those sown first, {some} flower: they are large when the cold meets them.',
  'question.indoors.light':
    'Trays that stand for months need lamps, or plants grow thin; they wait for the bed, not for you.',

  'question.many.head': '{place}: for {people, plural, one {one person} other {# people}}, {answer}',
  'question.many.use': '{week} a week from a {store}.',
  'question.many.caution':
    'Kinds keep unlike: eat thick-necked, bruised and double bulbs first, and look the rest over each month.',

  'question.table': 'What the answer was read from',
  'question.column.what': 'What',
  'question.column.start': 'Start',
  'question.column.good': 'Good bulbs',
  'question.column.size': 'Across',
  'question.column.flower': 'Flower',
  'question.column.ripe': 'Ripe',
  'question.column.plants': 'Plants',
  'question.column.last': 'Last until',
  'question.row.start': '{kind}, {start}, {date}',
  'question.role.own': 'The onion for here',
  'question.role.stranger': 'Kind from elsewhere',
  'question.role.late-start': 'Sown too late',
  'question.role.short': 'Short-day',
  'question.role.intermediate': 'Intermediate-day',
  'question.role.long': 'Long-day',
  'question.role.late': 'Started late',
  'question.role.crowded': 'Crowded',
  'question.role.unwatered': 'Rain alone',
  'question.role.shaded': 'In shade',
  'question.role.other-kind': 'Another kind',
  'question.role.small-sets': 'Small sets, cold store',
  'question.role.large-sets': 'Large sets, cold store',
  'question.role.warm-sets': 'Large sets, kept warm',
  'question.role.kitchen-bulb': 'Kitchen onion, kept cold',
  'question.role.warm-bulb': 'Kitchen onion, kept warm',
  'question.role.shop-set': 'Set from a shop',
  'question.role.from-tropics': 'From the tropics',
  'question.role.from-north': 'From the far north',
  'question.role.autumn': 'Sown in autumn',
  'question.role.autumn-fleece': 'The same under fleece',
  'question.role.spring': 'Sown at another time',
  'question.role.trays-first': 'In trays, first',
  'question.role.trays-best': 'In trays, best',
  'question.role.trays-last': 'In trays, last',
  'question.role.bed': 'In the bed',
  'question.role.lot': 'Lot',
} as const;
