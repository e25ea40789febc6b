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
    'never bulbed, no bulb, no bulbs, did not bulb, won’t bulb, only leaves, all leaf, all top, only green, like leeks, like scallions',
  'question.called.which-onion':
    'which onion, which kind, what kind, which to buy, what to buy, what do I buy, which seed, best onion, short-day or long-day, which day length',
  'question.called.too-late':
    'too late, still in time, in time, can I still plant, can I still sow, plant now, sow now, today, now, when to plant, when to sow',
  'question.called.too-small':
    'small, so small, small bulbs, tiny, tiny bulbs, golf balls, marbles, not big, bigger bulbs, how do I get big onions',
  'question.called.sets-flower':
    'sets flower, flowering sets, flowered, went to seed, go to seed, run to seed, bolted, bolting, flower stalks, why do sets bolt',
  'question.called.kitchen-onions':
    'supermarket onions, supermarket, grocery store onions, shop onions, kitchen onions, sprouted onion, sprouting onion, plant an onion, regrow, store-bought onions',
  'question.called.from-abroad':
    'abroad, friend abroad, from abroad, another country, foreign seed, seed from home, my grandmother’s onion, seed by post, seed from overseas, other latitude',
  'question.called.sow-autumn':
    'autumn, fall, sow in autumn, sow in fall, plant in fall, winter, overwinter, overwintering, stand the winter, Japanese onions',
  'question.called.start-indoors':
    'indoors, sow indoors, trays, windowsill, greenhouse, how early, January, start early, early start, seedlings',
  'question.called.how-many':
    'how many, how much to plant, for a year, a family, how long do they keep, keep, store, storage, how big a bed',
  'question.called-filler':
    'a, an, the, is, are, was, do, does, did, can, could, I, my, mine, it, they, them, in, on, for, to, of, from, me, we, our, you, here, and, so, why, how, what, should, onion, onions',
} as const;
