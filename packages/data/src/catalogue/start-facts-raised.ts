import { fact, type StartFacts } from './start-fact.ts';

/** Own seedlings, raised in trays or a seedbed. */
export const raisedFacts: StartFacts = {
  levels: { choice: 'most', bolting: 'little', losses: 'little', work: 'most', cost: 'little' },
  facts: {
    time: [
      fact('raised-weeks', 'minnesota', { fromWeeks: 10, toWeeks: 12 }),
      fact('raised-weeks-shorter', 'iowa-2018', { fromWeeks: 8, toWeeks: 10 }),
      fact('raised-days', 'memory', { fromDays: 90, toDays: 120 }),
      fact('raised-clumps', 'herison-1993'),
    ],
    choice: [fact('raised-choice', 'practice')],
    bolting: [fact('raised-old-plants', 'leskovar-1999', { weeks: 11 })],
    losses: [
      fact('raised-young-plants', 'leskovar-1999', { youngWeeks: 6, olderWeeks: 8 }),
      fact('raised-plugs', 'ontario-trays'),
      fact('raised-setback', 'memory', { fromWeeks: 1, toWeeks: 2 }),
    ],
    work: [fact('raised-work', 'practice')],
    cost: [fact('raised-cost', 'practice')],
    cautions: [
      fact('raised-lamps-start', 'memory'),
      fact('lamps-and-water', 'practice'),
      fact('treated-seed', 'practice'),
    ],
  },
};
