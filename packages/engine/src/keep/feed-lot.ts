import type { LotTable } from './kitchen-periods.ts';

/** Less of a period's need than this is none: what rounding leaves. */
const crumb = 1e-9;

/**
 * Feeds a kitchen from so much of a lot, period by period from lifting on, and writes what it leaves of the need.
 * Tells whether it was eaten up in some year.
 */
export function feed(
  { from, m2 }: LotTable,
  areaM2: number,
  need: Float64Array,
  left: Float64Array,
  years: number,
  periods: number,
): boolean {
  let isSpent = false;
  for (let year = 0; year < years; year++) {
    const row = year * periods;
    const first = from[year];
    let area = first < 0 ? 0 : areaM2;
    let at = Math.max(0, first);
    for (let ahead = 0; ahead < periods; ahead++) {
      const i = row + at;
      const wanted = need[i];
      if (area <= 0 || wanted <= 0 || m2[i] === Number.POSITIVE_INFINITY) left[i] = wanted;
      else if (wanted * m2[i] <= area) {
        area -= wanted * m2[i];
        left[i] = 0;
      } else {
        const short = wanted - area / m2[i];
        left[i] = short > crumb ? short : 0;
        area = 0;
        isSpent = true;
      }
      if (++at === periods) at = 0;
    }
  }
  return isSpent;
}

/**
 * The least of a lot that feeds, in enough of the years, all that is left to feed, m²; infinite where none does, or only
 * more than `mostM2`.
 */
export function leastLast(
  { from, m2 }: LotTable,
  need: Float64Array,
  { years, periods, required }: { years: number; periods: number; required: Uint8Array },
  largest: Float64Array,
  mostM2: number,
): number {
  largest.fill(0);
  const allowed = largest.length - 1;
  for (let year = 0; year < years && largest[allowed] <= mostM2; year++) {
    const row = year * periods;
    let at = Math.max(0, from[year]);
    let eaten = 0;
    let must = 0;
    for (let ahead = 0; ahead < periods; ahead++) {
      const wanted = need[row + at];
      if (wanted > 0) {
        const takes = from[year] < 0 ? Number.POSITIVE_INFINITY : wanted * m2[row + at];
        // what is eaten where it need not be is gone all the same
        if (takes < Number.POSITIVE_INFINITY) eaten += takes;
        if (required[at]) must = takes === Number.POSITIVE_INFINITY ? takes : Math.max(must, eaten);
        if (must > mostM2) break;
      }
      if (++at === periods) at = 0;
    }
    enoughth(largest, must);
  }
  return largest[allowed] <= mostM2 ? largest[allowed] : Number.POSITIVE_INFINITY;
}

/** Keeps the largest values met, the greatest first: the last of them is what all but as many years come by with. */
export function enoughth(largest: Float64Array, value: number): void {
  let at = largest.length - 1;
  if (value <= largest[at]) return;
  while (at > 0 && largest[at - 1] < value) {
    largest[at] = largest[at - 1];
    at--;
  }
  largest[at] = value;
}
