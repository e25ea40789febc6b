import { climateYearDays } from '../calendar/index.ts';
import type { KitchenKind } from './keep-year.ts';
import { keepingCurve, keptDays } from './keeping.ts';
import { unripeKeepsMonths, usualBruised } from './lifting.ts';
import type { LotStart } from './lot-starts.ts';
import type { LotYears } from './lot-years.ts';
import type { StoreClimate } from './store-climate.ts';
import type { StoreDraw } from './store-draw.ts';

/** A lot that might be planted, with what is left of it by year and day after lifting. */
export type CandidateLot = {
  start: LotStart;
  kind: KitchenKind;
  years: LotYears;
  /** Share of what was lifted, by mass, that is still sound: rows of {@link keptDays} a year; 0 once it is called over. */
  left: Float64Array;
  /** Days from lifting until it is called over, by year. */
  lastsDays: Int16Array;
};

/** A lot of which so little is sound, by number, is cleared out (memory, adjustable). */
const calledOverAt = 0.25;

export function candidateLot(
  start: LotStart,
  kind: KitchenKind,
  years: LotYears,
  store: StoreClimate,
  draws: readonly StoreDraw[],
): CandidateLot {
  const count = draws.length;
  const left = new Float64Array(count * keptDays);
  const lastsDays = new Int16Array(count);
  for (let year = 0; year < count; year++) {
    if (years.kgM2[year] <= 0) continue;
    const lot = {
      keepsMonths: years.isRipe[year] ? kind.keepsMonths : unripeKeepsMonths,
      thickNeckShare: years.thickNeckShare[year],
      bruisedShare: usualBruised,
    };
    const { sound, massShare } = keepingCurve(lot, store, years.liftedOn[year], draws[year]);
    let day = 0;
    while (day < keptDays && sound[day] >= calledOverAt) {
      left[year * keptDays + day] = sound[day] * massShare[day];
      day++;
    }
    lastsDays[year] = Math.min(day, climateYearDays);
  }
  return { start, kind, years, left, lastsDays };
}
