/** What home growers ask again and again, in their own words, with other words for each, commas between. */
export const questions = {
  'question.ask.never-bulbed': 'Why did mine never bulb?',
  'question.ask.which-onion': 'Which onion do I buy here?',
  'question.ask.too-late': 'Is it too late today?',
  'question.ask.too-small': 'Why are mine so small?',
  'question.ask.sets-flower': 'Why do my neighbour’s sets flower?',
  'question.ask.kitchen-onions': 'Can I plant supermarket onions?',
  'question.ask.from-abroad': 'Can I grow the onion my friend abroad grows?',
  'question.ask.sow-autumn': 'Can I sow in autumn?',
  'question.ask.start-indoors': 'How early can I sow indoors, and does it make bigger bulbs?',
  'question.ask.how-many': 'How many do I plant for a year, and how long do they keep?',

  'question.called.never-bulbed':
    'never bulbed, no bulb, no bulbs, did not bulb, won’t bulb, only leaves, all leaf, all top, only green, only made leaves, made only leaves, nothing but leaves, no bulb formed, like leeks, like scallions',
  'question.called.which-onion':
    'which onion, which kind, what kind, which variety, what variety, which variety to grow, which to grow, what to grow, which to buy, what to buy, what do I buy, which seed, best onion, best variety, best onion for my garden, short-day or long-day, which day length, which kind for my latitude',
  'question.called.too-late':
    'too late, still in time, in time, can I still plant, can I still sow, plant now, sow now, too late to plant, too late to sow, when is it too late, today, now',
  'question.called.too-small':
    'small, so small, small bulbs, tiny, tiny bulbs, golf balls, marbles, walnuts, size of a walnut, size of a marble, size of a golf ball, too little, not big, get bigger, bigger bulbs, how do I get big onions',
  'question.called.sets-flower':
    'sets flower, flowering sets, flowered, went to seed, go to seed, run to seed, bolted, bolting, flower stalks, sets bolted, why do sets bolt',
  'question.called.kitchen-onions':
    'supermarket onions, supermarket, grocery store onions, shop onions, kitchen onions, sprouted onion, sprouting onion, plant an onion, regrow, store-bought onions',
  'question.called.from-abroad':
    'abroad, friend abroad, from abroad, another country, seed from another country, foreign seed, seed from home, my grandmother’s onion, my grandmother’s seed, sent me seed, brought me seed, cousin, aunt, uncle, relatives, seed by post, seed from overseas, from my country, other latitude',
  'question.called.sow-autumn':
    'autumn, fall, sow in autumn, sow in fall, plant in fall, winter, over winter, over the winter, through winter, leave in over winter, leave in the ground in winter, overwinter, overwintering, stand the winter, survive the winter, Japanese onions',
  'question.called.start-indoors':
    'indoors, sow indoors, trays, windowsill, greenhouse, how early, January, start early, early start, start seed indoors, when to sow indoors, when to start seed indoors, when to start seedlings, seedlings',
  'question.called.how-many':
    'how many, how much to plant, how many to plant, how many to sow, for a year, a family, a household, people, adults, how long do they keep, how long will they keep, keep, store, storage, how big a bed',
  'question.elsewhere.why':
    'rot, rotting, rotten, mould, mouldy, mildew, thick necks, thick neck, soft, soft bulbs, split, splitting, double bulbs, doubles, yellow leaves, leaves turn yellow, leaf tips, brown tips, spots, maggots, grubs, worms, thrips, holes, pests, disease, sick, died, dying, wilted, fell over, went wrong, did not come up, sprouted in store',
  'question.elsewhere.which':
    'sets or seed, seed or sets, sets or plants, seed or plants, sets better than seed, seed better than sets, plants better than seed, which keeps longest, keeps longest, keeps best, sweetest, mildest, red onion, white onion, yellow onion, varieties, compare kinds',
  'question.elsewhere.when':
    'when, when to sow, when to plant, when to start, when to sow seed, when to plant sets, when to set out, when do sets go in, when to pull, when to dig up, when to harvest, when are they ripe, what month, which month, what date, sowing date, planting date, sowing dates, planting dates, sowing time, planting time, best time to sow, best time to plant',
  /** One to ten in turn. */
  'question.number-words': 'one, two, three, four, five, six, seven, eight, nine, ten',
  'question.people.eaters':
    'people, person, adult, child, children, kid, grown up, eater, mouth, head, of us, in the family, in the household',
  'question.people.before': 'family of, household of, we are, there are, feed, feeds, to feed',
  'question.people.lastly': 'for, only',
  'question.called-filler':
    'a, an, the, is, are, was, were, be, been, has, have, had, do, does, did, don’t, didn’t, can, could, will, would, I, I’m, my, mine, it, its, it’s, they, them, this, these, that, in, on, for, to, of, at, by, with, from, me, we, our, us, you, your, here, there, and, or, so, if, why, how, what, should, please, onion, onions',
} as const;
