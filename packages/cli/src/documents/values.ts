import { round } from '@neckfall/answers';
import { civilDate, type DateSpread, formatDay, type SeasonShares, type Spread } from '@neckfall/engine';

export { round };

function roundOrNull(value: number | null): number | null {
  return value === null ? null : round(value);
}

/** MM-DD of a day number. */
export function monthDay(day: number): string {
  return formatDay(day).slice(5);
}

export function rangeOf({ p10, p50, p90 }: Spread) {
  return { p10: roundOrNull(p10), p50: roundOrNull(p50), p90: roundOrNull(p90) };
}

export function dateRangeOf({ p10, p50, p90, share }: DateSpread) {
  const date = (day: number | null) => (day === null ? null : formatDay(day));
  return { p10: date(p10), p50: date(p50), p90: date(p90), share };
}

export function onsetRangeOf(onset: DateSpread & { sunUpH: number | null; photoperiodH: number | null }) {
  return {
    ...dateRangeOf(onset),
    sunUpH: roundOrNull(onset.sunUpH),
    photoperiodH: roundOrNull(onset.photoperiodH),
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
