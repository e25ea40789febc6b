import { fact, type StartFacts } from './start-fact.ts';

/** Sets: small bulbs of last year. Diameters of coins are memory. */
export const setsFacts: StartFacts = {
  levels: { choice: 'least', bolting: 'most', losses: 'little', work: 'least', cost: 'more' },
  facts: {
    time: [
      fact('sets-days', 'illinois', { fromDays: 90, toDays: 120 }),
      fact('sets-green-days', 'illinois', { fromDays: 28, toDays: 42 }),
      fact('sets-heated-later', 'memory', { fromWeeks: 1, toWeeks: 2 }),
    ],
    choice: [fact('sets-choice', 'mason'), fact('sets-long-day', 'practice')],
    bolting: [
      fact('sets-size', 'mason', { sizeMm: 18 }),
      fact('sets-size-larger', 'iowa-2018', { sizeMm: 21 }),
      fact('sets-heated', 'heath-1943', { weeks: 22, warmTempC: 30 }),
      fact('sets-warm-end', 'krawiec-2007', { weeks: 9, fromTempC: 18, toTempC: 20 }),
    ],
    losses: [fact('sets-store-loss', 'krawiec-2007')],
    work: [fact('sets-work', 'practice')],
    cost: [fact('sets-cost', 'practice')],
    cautions: [
      fact('sets-keep-less', 'mason'),
      fact('sets-large-yield', 'khartoum', { fromPct: 21, toPct: 23 }),
      fact('treated-sets', 'practice'),
      fact('plants-across-borders', 'practice'),
    ],
  },
};
