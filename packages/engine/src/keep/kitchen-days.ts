import { climateYearDays, monthOfClimateDay } from '../calendar/index.ts';
import { keptDays } from './keeping.ts';
import type { CandidateLot } from './lot-supply.ts';

/** A kitchen's year day by day, over all weather years. */
export type KitchenDays = {
  /** By year and climate day: share of the need that went unfed, 0…1. */
  unfed: Float64Array;
  /** By lot, year and month (0 = January): in store at its end, eaten and lost in it, kg. */
  store: Float64Array;
  eaten: Float64Array;
  lost: Float64Array;
  /** By lot and year: days from lifting until the last of it is eaten or lost. */
  lastDays: Int16Array;
};

/** Where the numbers of a lot, year and month lie. */
export const monthAt = (lot: number, year: number, years: number, month: number) =>
  (lot * years + year) * 12 + month;

const monthOf = Uint8Array.from({ length: climateYearDays }, (_, day) => monthOfClimateDay(day));
const crumb = 1e-9;

/** Eats through lots in their order, each from the day it is lifted until the same lot is lifted a year on. */
export function kitchenDays(
  lots: readonly CandidateLot[],
  areasM2: ArrayLike<number>,
  years: number,
  needKgPerDay: number,
): KitchenDays {
  const unfed = new Float64Array(years * climateYearDays).fill(1);
  const monthly = () => new Float64Array(lots.length * years * 12);
  const store = monthly();
  const eaten = monthly();
  const lost = monthly();
  const lastDays = new Int16Array(lots.length * years);
  for (let lot = 0; lot < lots.length; lot++) {
    const { left, lastsDays, years: of } = lots[lot];
    for (let year = 0; year < years; year++) {
      let liftedKg = areasM2[lot] * of.kgM2[year];
      const first = year * keptDays;
      const lasts = lastsDays[year];
      for (let age = 0; age < lasts && liftedKg > crumb; age++) {
        const day = (of.liftedOn[year] + age) % climateYearDays;
        const at = monthAt(lot, year, years, monthOf[day]);
        const share = left[first + age];
        const wanted = unfed[year * climateYearDays + day] * needKgPerDay;
        const ate = Math.min(wanted, liftedKg * share);
        liftedKg -= ate / share;
        if (liftedKg <= crumb) liftedKg = 0;
        const still = age + 1 < lasts ? left[first + age + 1] : 0;
        eaten[at] += ate;
        lost[at] += liftedKg * (share - still);
        const short = (wanted - ate) / needKgPerDay;
        unfed[year * climateYearDays + day] = short > crumb ? short : 0;
        if (monthOf[(day + 1) % climateYearDays] !== monthOf[day]) store[at] = liftedKg * still;
        lastDays[lot * years + year] = age + 1;
      }
    }
  }
  return { unfed, store, eaten, lost, lastDays };
}
