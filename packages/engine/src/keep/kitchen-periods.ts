import { climateYearDays } from '../calendar/index.ts';
import { keptDays } from './keeping.ts';
import type { CandidateLot } from './lot-supply.ts';

/** The kitchen's year is planned in so many periods of about a week. */
export const yearPeriods = 52;
export const periodDays = climateYearDays / yearPeriods;

/** Bed for a period is planted up to so many times what the best harvest takes on the day it is lifted (our choice). */
const dearest = 5;

/** A lot as the search for areas sees it: by year and period of a year taken as a circle. */
export type LotTable = {
  /** First period in which it is eaten, by year; −1 where there is nothing to eat. */
  from: Int16Array;
  /** Bed that feeds a kitchen through one period, m², rows of periods a year; infinite while nothing sound is left. */
  m2: Float64Array;
  /** Wants that it answers, a bit each. */
  likes: number;
  /** Least area with which it answers them, steps. */
  likeSteps: number;
};

/**
 * A lot in a kitchen of so much need. A period counts what is left on its last day, and one that began before
 * lifting is not fed: what is planned in periods holds day by day. Where little is left of a poor harvest, nobody
 * plants for it.
 *
 * @param needKg of one period
 * @param bestKgM2 usual harvest of the best lot
 */
export function tableOf(
  { years, left }: CandidateLot,
  needKg: number,
  bestKgM2: number,
): Pick<LotTable, 'from' | 'm2'> {
  const count = years.kgM2.length;
  const from = new Int16Array(count).fill(-1);
  const m2 = new Float64Array(count * yearPeriods).fill(Number.POSITIVE_INFINITY);
  for (let year = 0; year < count; year++) {
    const kgM2 = years.kgM2[year];
    if (kgM2 <= 0) continue;
    const lifted = years.liftedOn[year];
    const first = Math.ceil(lifted / periodDays);
    from[year] = first % yearPeriods;
    for (let ahead = 0; ahead < yearPeriods; ahead++) {
      const age = Math.ceil((first + ahead + 1) * periodDays) - lifted;
      const share = age < keptDays ? left[year * keptDays + age] : 0;
      if (kgM2 * share * dearest >= bestKgM2)
        m2[year * yearPeriods + ((first + ahead) % yearPeriods)] = needKg / (kgM2 * share);
    }
  }
  return { from, m2 };
}
