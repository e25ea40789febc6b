/** What went wrong with a crop: what it was, how sure that is, what can still be had, what would have helped. */
export const why = {
  'why.chance.tenths': '{tenths} in 10',
  'why.chance.least': 'fewer than 1 in 20',
  'why.chance.most': 'more than 19 in 20',
  'why.lead.sure': '{cause}. Most likely so: {chance}.',
  'why.lead.likely': '{cause}. Likely, but not sure: {chance}.',
  'why.lead.unsure': 'It may be one of several things. {cause}: {chance}, and nothing known is likelier.',
  'why.usual':
    'Run again as you told it, this shows {seasons} whatever is done: it may be the year, or that packet of seed.',
  'why.unseen': 'Something else, that no reckoning and no list knows: {chance}.',

  'why.eating.yes': 'What is firm and clean is good to eat.',
  'why.eating.cut-away':
    'Cut the bad part away with plenty round it: eat only what is firm, clean and smells as it should.',
  'why.eating.no': 'Do not eat those that are spoilt; firm, clean ones beside them are fine.',
  'why.storing.yes': 'Once dry they store like any others.',
  'why.storing.eat-first': 'They do not keep for long: eat them before all others.',
  'why.storing.no': 'Do not store any that show it.',

  'why.caution.mould-throw-away':
    'Throw soft, wet or mouldy bulbs away whole: mould runs further than you see, and some kinds make poison.',
  'why.caution.not-sure-is-it-onion':
    'Crush a leaf with clean hands. If it does not smell of onion, do not eat it: poisonous bulbs such as death camas and lily of the valley look much like onions.',
  'why.caution.pets':
    'Onions poison dogs, cats and farm animals, raw, cooked or rotten: keep bulbs, skins and waste from them.',
  'why.caution.do-not-move-soil':
    'What lives in that soil stays for many years: carry none of it to other beds on boots, tools or plants.',
  'why.caution.not-on-compost':
    'Put sick plants and bulbs in the rubbish, not on the compost, where what ails them lives on.',
  'why.caution.pesticide-local-rules':
    'Before you spray anything, ask what is allowed where you live. Local rules, licensed advice and the label decide, down to the days before harvest.',
  'why.caution.green-is-not-potato':
    'Green in an onion is not the poison of green potatoes: it does no harm, it is only bitter.',

  'why.grown.sound': '{bulbs} still sound',
  'why.grown.flower':
    '{tenths, plural, =0 {hardly any plant runs} =10 {nearly every plant runs} one {# plant in 10 runs} other {# plants in 10 run}} to flower',
  'why.grown.winter': 'most lost to winter',
  'why.grown.no-bulb': 'no bulbs',
  'why.grown.thick': 'thick necks on bulbs {size} across',
  'why.grown.size': '{size} across',
  'why.grown.good': '{grown}, good bulbs {years}',
  'why.what-if':
    '{way, select, kept {As kept} unsaid {If it was so} other {As grown}}: {was}; {change}: {would}.',
  'why.next-year': '{change}: {would}.',
  'why.next-year.same': 'If that does not come again, the same plan next year: {would}.',

  'why.time.days': '{count, plural, one {# day} other {# days}}',
  'why.time.weeks': '{count, plural, one {# week} other {# weeks}}',
  'why.of.seasons':
    '{tenths, plural, =0 {in hardly any season} =10 {in nearly every season} one {in # season in 10} other {in # seasons in 10}}',
  'why.of.plants':
    '{tenths, plural, =0 {hardly any} =10 {nearly all} one {# plant in 10} other {# plants in 10}}',
  'why.of.bulbs':
    '{tenths, plural, =0 {hardly any} =10 {nearly all} one {# bulb in 10} other {# bulbs in 10}}',
  'why.of.seeds':
    '{tenths, plural, =0 {hardly any} =10 {nearly all} one {# seed in 10} other {# seeds in 10}}',

  'why.change.other-kind': 'with {type} onions',
  'why.change.other-start.direct-seed': 'with {type} onions sown in place about {date}',
  'why.change.other-start.raised-seedlings': 'with {type} onions sown in trays about {date}',
  'why.change.other-start.bought-transplants': 'with {type} onions set out as bought plants about {date}',
  'why.change.other-start.sets': 'with {type} onions planted as sets about {date}',
  'why.change.earlier': 'started {time} earlier, about {date}',
  'why.change.later': 'started {time} later, about {date}',
  'why.change.smaller-sets': 'from sets {size} across',
  'why.change.warm-stored-sets': 'from sets that were stored warm',
  'why.change.watered': 'watered as needed',
  'why.change.wider': 'with more room, {density}',
  'why.change.in-sun': 'in full sun',
  'why.change.covered': '{cover, select, tunnel {in a tunnel} other {under fleece}}',
  'why.change.usual-kind': 'grown from the kind that is usual here',
  'why.change.usual-day': 'started when it is usual here',
  'why.change.fresh-packet': 'with seed that is what its packet says',
  'why.change.cool-store': 'kept at {temp} or colder',
  'why.change.dry-store': 'kept in air of {humidity}% humidity or less',
  'why.change.frost-free-store': 'kept free of frost',
  'why.change.better-keeper': 'with a kind that keeps {months, plural, one {# month} other {# months}}',
  'why.change.lifted-ripe': 'harvested ripe',
  'why.change.usual-weather': 'in the usual weather of the place',
  'why.change.other-weather': 'in a season {by} {way, select, colder {cooler} other {warmer}}',

  'why.next.other-kind': 'Next year grow {type} onions',
  'why.next.other-start.direct-seed': 'Next year sow {type} onions in place about {date}',
  'why.next.other-start.raised-seedlings': 'Next year sow {type} onions in trays about {date}',
  'why.next.other-start.bought-transplants': 'Next year set out {type} onions as bought plants about {date}',
  'why.next.other-start.sets': 'Next year plant {type} onions as sets about {date}',
  'why.next.earlier': 'Next year start {time} earlier, about {date}',
  'why.next.later': 'Next year start {time} later, about {date}',
  'why.next.smaller-sets': 'Next year plant sets no wider than {size}',
  'why.next.warm-stored-sets': 'Next year plant sets that were stored warm',
  'why.next.watered': 'Next year water before the bed dries out',
  'why.next.wider': 'Next year give them more room, {density}',
  'why.next.in-sun': 'Next year give them a bed in full sun',
  'why.next.covered': 'Next year grow them {cover, select, tunnel {in a tunnel} other {under fleece}}',
  'why.next.usual-kind': 'Next year grow the kind that is usual here',
  'why.next.usual-day': 'Next year start when it is usual here',
  'why.next.fresh-packet': 'Next year sow a named kind from a fresh packet',
  'why.next.cool-store': 'Next year keep them as near to {temp} as you can',
  'why.next.dry-store': 'Next year keep them where the air stays at {humidity}% humidity or less',
  'why.next.frost-free-store': 'Next year keep them where it does not freeze',
  'why.next.better-keeper':
    'Next year grow a kind that keeps {months, plural, one {# month} other {# months}}',
  'why.next.lifted-ripe': 'Next year wait with the harvest until most tops are down',
} as const;
