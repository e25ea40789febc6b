import { climateDayOf } from '../calendar/index.ts';
import { marketableKgM2, type Plan, plantOutDayOf, runnerOf, type Site } from '../season/index.ts';
import { liftedOf } from './lifting.ts';

/**
 * A kitchen is planned through so many weather years, each with a draw of the plant and of the store: more than tell of one
 * crop, as a plan that just holds in few years holds in fewer of others (our choice).
 */
export const kitchenYears = 90;

/** What one way of growing gives, by weather year of the kitchen's. */
export type LotYears = {
  /** Climate day of lifting, 0…364; of no meaning where nothing is harvested. */
  liftedOn: Int16Array;
  /** Days from the start to lifting; −1 where no bulbs form. */
  liftedAfter: Int16Array;
  kgM2: Float64Array;
  thickNeckShare: Float64Array;
  isRipe: Uint8Array;
};

/** Grows a plan through all years of a site, to keep of each what it gave. */
export function lotYearsOf(site: Site, plan: Plan): LotYears {
  const { years } = site;
  const runner = runnerOf(site, plan);
  const of: LotYears = {
    liftedOn: new Int16Array(years),
    liftedAfter: new Int16Array(years).fill(-1),
    kgM2: new Float64Array(years),
    thickNeckShare: new Float64Array(years),
    isRipe: new Uint8Array(years),
  };
  runner.moveTo(plan.startDay, plantOutDayOf(plan));
  for (let year = 0; year < years; year++) {
    const outcome = runner.season(year);
    const lifted = liftedOf(outcome, runner.crop.lastDay);
    if (lifted === null) continue;
    const after = Math.round(lifted.on);
    of.liftedAfter[year] = after;
    of.liftedOn[year] = climateDayOf(plan.startDay + after);
    of.kgM2[year] = marketableKgM2(outcome, runner.crop.type.dryMatterShare, plan.densityPerM2);
    of.thickNeckShare[year] = lifted.thickNeckShare;
    of.isRipe[year] = lifted.isRipe ? 1 : 0;
  }
  return of;
}
