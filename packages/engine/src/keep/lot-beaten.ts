import { type LotTable, yearPeriods } from './kitchen-periods.ts';

/** So many lots are searched at most; among more, lots are first told apart by no less than so much bed, then by more. */
export const mostSearched = 7;
const asGood = { first: 1.05, further: 1.1, last: 3 } as const;

/** Which of the lots are worth a search, 1 each: those that no other makes useless. */
export function worthSearching(lots: readonly LotTable[]): boolean[] {
  let kept = lots.map(() => true);
  for (let by = asGood.first as number; by < asGood.last; by *= asGood.further) {
    kept = kept.map(
      (isKept, at) =>
        isKept &&
        lots.every(
          (other, i) =>
            i === at ||
            !kept[i] ||
            !isBeatenBy(lots[at], other, by) ||
            // of two that are as good as each other, the one that is eaten later stays
            (isBeatenBy(other, lots[at], by) && i < at),
        ),
    );
    if (kept.filter(Boolean).length <= mostSearched) break;
  }
  return kept;
}

/**
 * Whether a lot is of no use beside another: through all of its time the other feeds the kitchen from no more bed, but
 * for a factor, in the middle of the years and in poor ones, and answers all its wants. What the one would feed the same bed of the
 * other feeds too.
 */
function isBeatenBy(one: LotTable, other: LotTable, asGood: number): boolean {
  if ((one.likes & ~other.likes) !== 0) return false;
  const [own, others] = [outlook(one), outlook(other)];
  for (let at = 0; at < own.length; at++) {
    if (others[at] > own[at] * asGood) return false;
  }
  return true;
}

const seen = new WeakMap<LotTable, Float64Array>();

/** Bed for each period in the middle of the years, and in two of ten that are poorer. */
function outlook(lot: LotTable): Float64Array {
  let known = seen.get(lot);
  if (!known) {
    const years = lot.from.length;
    known = new Float64Array(2 * yearPeriods);
    for (let at = 0; at < yearPeriods; at++) {
      const sorted = Float64Array.from(
        { length: years },
        (_, year) => lot.m2[year * yearPeriods + at],
      ).sort();
      known[2 * at] = sorted[Math.floor((years - 1) / 2)];
      known[2 * at + 1] = sorted[Math.floor((years - 1) * 0.8)];
    }
    seen.set(lot, known);
  }
  return known;
}
