import { fact, type StartFacts } from './start-fact.ts';

/** Bought plants, bare-rooted in bundles or in plugs. */
export const boughtFacts: StartFacts = {
  levels: { choice: 'little', bolting: 'more', losses: 'least', work: 'little', cost: 'most' },
  facts: {
    time: [fact('bought-days', 'memory', { fromDays: 90, toDays: 120 })],
    choice: [fact('bought-choice', 'practice')],
    bolting: [fact('bought-thick', 'zandstra-1985'), fact('bought-thin', 'peffley-2017')],
    losses: [
      fact('bought-holding', 'texas-2021', { weeks: 3 }),
      fact('bought-frost', 'texas-2021', { coldTempC: -7 }),
      fact('bought-heavier', 'russo-2004', { pct: 12 }),
    ],
    work: [fact('bought-work', 'practice')],
    cost: [fact('bought-plugs-cost', 'hoepting-2009', { from: 3, to: 4 })],
    cautions: [fact('bought-diseases', 'hoepting-2009'), fact('plants-across-borders', 'practice')],
  },
};
