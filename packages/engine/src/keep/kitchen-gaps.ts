import type { LotTable } from './kitchen-periods.ts';

/** In how many of how many years a kitchen is to be fed, and from how few lots. */
export type Limits = { years: number; periods: number; enoughYears: number; mostLots: number };

/** So few sets of lots are looked at closely, of those that leave least bare. */
const closelySeen = 12;

/**
 * Periods that some few of the lots, in plenty, feed in enough years: 1 each, with these lots. Of those few that leave
 * least bare, the barest periods are given up until enough years are fed through all others; those stay that give up
 * least. Null where no so few lots answer the wants.
 *
 * @param likes wants that must be answered, a bit each
 */
export function feedablePeriods(
  lots: readonly LotTable[],
  limits: Limits,
  likes: number,
): { required: Uint8Array; few: readonly LotTable[] } | null {
  const fed = widestFew(lots, limits, likes).map((few) => ({ required: fedBy(few, limits), few }));
  const worth = ({ required }: { required: Uint8Array }) =>
    required.reduce((sum, must) => sum + must, 0) - gapsOf(required).length;
  return fed.length === 0 ? null : fed.reduce((a, b) => (worth(b) > worth(a) ? b : a));
}

function fedBy(few: readonly LotTable[], { years, periods, enoughYears }: Limits): Uint8Array {
  const bare = new Float64Array(periods);
  countBare(few, years, bare);
  const required = new Uint8Array(periods).fill(1);
  // of periods equally bare, one beside a gap: gaps are to be few
  const rank = (at: number) => {
    const beside = 2 - required[(at + 1) % periods] - required[(at + periods - 1) % periods];
    return bare[at] + beside / 4;
  };
  while (yearsFed(few, required, years) < enoughYears) {
    let worst = -1;
    for (let at = 0; at < periods; at++) {
      if (required[at] && (worst < 0 || rank(at) > rank(worst))) worst = at;
    }
    if (worst < 0) break;
    required[worst] = 0;
  }
  return required;
}

/** Those so few lots that leave the fewest periods bare in too many years, and of such the fewest years bare. */
function widestFew(
  lots: readonly LotTable[],
  { years, periods, enoughYears, mostLots }: Limits,
  likes: number,
): LotTable[][] {
  const most = Math.min(mostLots, lots.length);
  const few: LotTable[] = [];
  const bare = new Float64Array(periods);
  const widest: { few: LotTable[]; bareness: number }[] = [];
  const more = (from: number, answered: number): void => {
    if (few.length === most) {
      if ((likes & ~answered) !== 0) return;
      countBare(few, years, bare);
      let bareness = 0;
      for (const count of bare) bareness += count + (count > years - enoughYears ? years : 0);
      if (widest.length === closelySeen && bareness >= widest[closelySeen - 1].bareness) return;
      widest.push({ few: [...few], bareness });
      widest.sort((a, b) => a.bareness - b.bareness);
      widest.length = Math.min(widest.length, closelySeen);
      return;
    }
    for (let at = from; at < lots.length; at++) {
      few.push(lots[at]);
      more(at + 1, answered | lots[at].likes);
      few.pop();
    }
  };
  more(0, 0);
  return widest.map((one) => one.few);
}

/** Counts, by period, the years in which none of the lots feeds it. */
function countBare(few: readonly LotTable[], years: number, bare: Float64Array): void {
  const periods = bare.length;
  bare.fill(0);
  for (let year = 0; year < years; year++)
    for (let at = 0; at < periods; at++) if (!isFed(few, year * periods + at)) bare[at]++;
}

function yearsFed(few: readonly LotTable[], required: Uint8Array, years: number): number {
  let fed = 0;
  for (let year = 0; year < years; year++)
    if (required.every((must, at) => !must || isFed(few, year * required.length + at))) fed++;
  return fed;
}

function isFed(few: readonly LotTable[], i: number): boolean {
  for (const { m2 } of few) if (m2[i] < Number.POSITIVE_INFINITY) return true;
  return false;
}

/** First and last period of each gap, the last ≥ the first, beyond the year's end where it goes on there. */
export function gapsOf(required: Uint8Array): { first: number; last: number }[] {
  const periods = required.length;
  if (required.every((one) => one === 0)) return [{ first: 0, last: periods - 1 }];
  const gaps: { first: number; last: number }[] = [];
  for (let at = 0; at < periods; at++) {
    if (required[at] || !required[(at + periods - 1) % periods]) continue;
    let length = 1;
    while (!required[(at + length) % periods]) length++;
    gaps.push({ first: at, last: at + length - 1 });
  }
  return gaps;
}
