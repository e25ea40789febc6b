/** A kitchen kept in onions: what to plant, how long it lasts, what to get. */
export const keep = {
  'keep.answer':
    'Plant {area}: {plants, plural, one {# plant} other {# plants}} {kinds, select, each {{lots, plural, one {of one kind} =2 {of two kinds} =3 {of three kinds} other {in # lots}}} other {{lots, plural, =2 {in two lots} =3 {in three lots} other {in # lots}}}}; the last keepers go about {last}, and {bare}.',
  'keep.answer.all-year': 'the kitchen never runs out',
  'keep.answer.bare': 'in a poor year the store is bare {ranges}',
  'keep.answer.bare-most': 'in most years the store is bare {most}',
  'keep.answer.bare-more': 'in most years the store is bare {most}, in a poor one {ranges}',
  'keep.none': 'No onion that can be had here fills this kitchen’s store: buy bulbs, or grow green onions.',

  'keep.lot.direct-seed':
    'Sow {area} of {type} onions in place about {date}: {plants, plural, one {# plant} other {# plants}} from {needed, plural, one {# seed} other {# seeds}} ({names}); {ends}.',
  'keep.lot.raised-seedlings':
    'Sow {type} onions in trays about {date} for {area}: {plants, plural, one {# plant} other {# plants}} from {needed, plural, one {# seed} other {# seeds}} ({names}); {ends}.',
  'keep.lot.bought-transplants':
    'Set out {area} of {type} onions as bought plants about {date}: {plants, plural, one {# plant} other {# plants}}, {needed, plural, one {one bundle} other {# bundles}} ({names}); {ends}.',
  'keep.lot.sets':
    'Plant {area} of {type} onions from sets about {date}: {plants, plural, one {# plant} other {# plants}} from {needed, plural, one {# set} other {# sets}} ({names}); {ends}.',
  'keep.lot.ready': 'ready about {ready}',
  'keep.lot.ready-last': 'ready about {ready}, the last of them go about {last}',
  'keep.lot.green': 'pull them green from about {ready} to {last}',
  'keep.lot.never': 'in most years none come to keep',

  'keep.lot.numbered': 'Lot {lot}: {what}',

  'keep.gap': '{range}: the store may be bare. {closers} can close the gap.',
  'keep.gap.open': '{range}: the store may be bare, and nothing grown here closes the gap.',
  'keep.closer.overwintered': 'Onions that stood through the winter',
  'keep.closer.green-onions': 'Green onions',
  'keep.closer.shallots': 'Shallots',
  'keep.closer.bought': 'Onions from a shop',
  'keep.closer.other.overwintered': 'onions that stood through the winter',
  'keep.closer.other.green-onions': 'green onions',
  'keep.closer.other.shallots': 'shallots',
  'keep.closer.other.bought': 'onions from a shop',

  'keep.eat.order': 'Eat them in this order: {lots}.',
  'keep.eat.order.one': 'lot {lot} ({kind}, until about {last})',
  'keep.eat.flowered': 'Of the {kind}, {percent}% run to flower: eat those first, as they do not keep.',
  'keep.eat.unripe':
    'The {kind} are lifted unripe {years}: eat thick-necked ones first, as they do not keep.',
  'keep.eat.stored':
    '{name}: {thick, select, none {} other {{thick}% had thick necks, so eat them first; }}of what is sound, {percent}% sprouts or rots within 30 days; it is over about {last}.',
  'keep.eat.thick': 'Eat thick-necked, bruised and double bulbs before any others.',

  'keep.in-store':
    '{name}, lifted {date}: {amount, select, none {} other {{amount} sound, }}{percent}% of what was lifted; over about {last}.',
  'keep.in-store.look': 'Look through them about {date}.',
  'keep.in-store.bulbs': '{count, plural, one {# bulb} other {# bulbs}}',

  'keep.shop.seeds':
    '{count, plural, one {# seed} other {# seeds}} of {type} onions ({names}): about {mass} of seed.',
  'keep.shop.sets':
    '{count, plural, one {# set} other {# sets}} of {type} onions ({names}), {size} across: about {mass}.',
  'keep.shop.bundles':
    '{count, plural, one {One bundle} other {# bundles}} of {type} onions ({names}), for {plants, plural, one {# plant} other {# plants}}.',
  'keep.shop.trays':
    'Trays with {cells, plural, one {# cell} other {# cells}} in all, and {compost} of seed compost.',
  'keep.shop.labels': '{count, plural, one {One label} other {# labels}}, one for each lot that is stored.',

  'keep.store.cellar': 'cellar',
  'keep.store.shed': 'shed',
  'keep.store.garage': 'garage',
  'keep.store.kitchen': 'kitchen',
  'keep.store.fridge': 'fridge',
  'keep.store.own': 'a store as you measured it',
  'keep.like.mild': 'mild onions',
  'keep.like.keeper': 'long keepers',
  'keep.like.red': 'red onions',
  'keep.like.green': 'green onions',
  'keep.unmet': 'Nothing that can be had here answers the wish for {likes}.',

  'keep.how.supplied':
    'The store was tried in {tried} such years, the same planted again each year: but for the days on which it may be bare, every day is supplied {years}.',
  'keep.how.store':
    'The store ({store}) has {temps} and {damp}% humidity over the year{said, select, own {, as you said} read {, reckoned from the climate of the place and drawn toward {readings, plural, one {your reading} other {your # readings}}} other {, reckoned from the climate of the place: no survey of household stores was found}}.',
  'keep.how.taught':
    '{looks, plural, one {One look} other {# looks}} at what was kept there {looks, plural, one {is} other {are}} counted in: onions sprout {sprouting, select, sooner {about {share}% sooner than is usual} later {about {share}% later than is usual} other {as soon as is usual}}, and {rotting, select, more {more of them rot} fewer {fewer of them rot} other {as many rot as is usual}}.',
  'keep.how.use.given':
    'The kitchen eats {week} a week, for {people, plural, one {one person} other {# people}}, as you said.',
  'keep.how.use.usual':
    'Nothing was said of what you eat: {each} a person and week is usual, {week} for {people, plural, one {one person} other {# people}} (source: {source}).',
  'keep.how.weights':
    'Seed is reckoned at {gram} seeds to a gram (a seed producer), sets a little longer than wide, 2 to 3 g at 16 mm (trials at Assiut).',
  'keep.source.published': '{title}{year, select, none {} other { (for {year})}}',
  'keep.source.united-nations':
    'figures of the United Nations{year, select, none {} other { for {year}}}, as reported by {title}',
  'keep.source.conference': 'a conference report for {year}',
  'keep.source.memory': 'general knowledge of food balance sheets, not checked',
} as const;
