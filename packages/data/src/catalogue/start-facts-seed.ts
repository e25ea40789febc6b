import { fact, type StartFacts } from './start-fact.ts';

/** Seed sown in place, in spring or in autumn. */
export const seedFacts: StartFacts = {
  levels: { choice: 'most', bolting: 'least', losses: 'most', work: 'more', cost: 'least' },
  facts: {
    time: [
      fact('seed-days-spring', 'illinois', { fromDays: 90, toDays: 110 }),
      fact('seed-days-autumn', 'memory', { fromDays: 150, toDays: 180 }),
    ],
    choice: [fact('seed-choice', 'practice'), fact('seed-overwinter-choice', 'practice')],
    bolting: [fact('seed-late-small', 'zandstra-1985'), fact('seed-autumn-dates', 'overwintered-spacing')],
    losses: [
      fact('seed-field-loss', 'memory', { fromPct: 30, toPct: 50 }),
      fact('seed-winter-tunnel', 'sideman-2014', { fromPct: 65, toPct: 100 }),
    ],
    work: [fact('seed-work', 'iowa-2018')],
    cost: [fact('seed-cheapest', 'iowa-2018')],
    cautions: [
      fact('seed-late-necks', 'brewster-sowing'),
      fact('seed-autumn-cold', 'oregon-1987', { coldTempC: -18 }),
      fact('treated-seed', 'practice'),
    ],
  },
};
