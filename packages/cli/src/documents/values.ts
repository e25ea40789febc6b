import { round } from '@neckfall/answers';
import {
  civilDate,
  type DateSpread,
  formatDay,
  type OnsetSpread,
  type SeasonShares,
  type Spread,
} from '@neckfall/engine';

export { round };

/** MM-DD of a day number. */
export function monthDay(day: number): string {
  return formatDay(day).slice(5);
}

/** Documents keep their fields where a thing never happens, and leave them null. */
const noRange = { p10: null, p50: null, p90: null };

export function rangeOf(of: Spread | null) {
  return of ? { p10: round(of.p10), p50: round(of.p50), p90: round(of.p90) } : noRange;
}

export function dateRangeOf({ days, share }: DateSpread) {
  return days
    ? { p10: formatDay(days.p10), p50: formatDay(days.p50), p90: formatDay(days.p90), share }
    : { ...noRange, share };
}

export function onsetRangeOf({ days, share }: OnsetSpread) {
  return {
    ...dateRangeOf({ days, share }),
    sunUpH: days && round(days.sunUpH),
    photoperiodH: days && round(days.photoperiodH),
  };
}

export function seasonSharesOf(shares: SeasonShares) {
  return {
    good: shares.good,
    small: shares.small,
    noBulb: shares['no-bulb'],
    bolts: shares.bolts,
    winterKilled: shares['winter-killed'],
    notRipe: shares['not-ripe'],
  };
}

export function yearOf(day: number): number {
  return civilDate(day).year;
}
