import { offersOf } from '../packages/answers/src/index.ts';
import { cultivars } from '../packages/data/src/index.ts';
import {
  chooseKinds,
  type Kind,
  kindsOf,
  type MonthlyClimate,
  openSite,
  planDefaults,
  runPlan,
} from '../packages/engine/src/index.ts';
import { medianMs, type Row } from './timing.ts';

/** The whole catalogue at a place nobody has asked about, on one thread, and the plain way beside it. */
export function whichRows(climate: MonthlyClimate, years: number, firstDay: number): Row[] {
  const open = () => openSite({ climate, years, seed: 1 });
  const kinds = kindsOf(offersOf(cultivars));
  let firstRowsMs = 0;
  const choose = () => {
    const from = performance.now();
    return chooseKinds(open(), kinds, firstDay, {}, ({ coarse }) => {
      if (coarse) firstRowsMs = performance.now() - from;
      return true;
    });
  };
  const ms = medianMs(3, choose);
  const few = kinds.filter((_, at) => at % 20 === 0);
  return [
    {
      what: `which, ${kinds.length} kinds, first rows (mean climate)`,
      value: firstRowsMs,
      unit: 'ms',
      limit: null,
    },
    { what: `which, ${kinds.length} kinds, ${years} years, one thread`, value: ms, unit: 'ms', limit: null },
    {
      what: 'the same trying every week (from every 20th)',
      value: (medianMs(1, () => everyWeek(few)) * kinds.length) / few.length,
      unit: 'ms',
      limit: null,
    },
  ];

  function everyWeek(of: readonly Kind[]): number {
    const site = open();
    let good = 0;
    for (const { type, traits, start } of of) {
      for (let week = 0; week < 52; week++) {
        const plan = { ...planDefaults, type, traits, start, startDay: firstDay + 7 * week };
        good += runPlan(site, plan).seasonShares.good;
      }
    }
    return good;
  }
}
