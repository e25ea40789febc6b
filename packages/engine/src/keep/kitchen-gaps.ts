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
  const seen = lots.map((lot) => ({ lot, fed: fedYears(lot, limits) }));
  const found = widestFew(seen, limits, likes).map((few) => ({
    required: fedBy(together(few, limits), limits),
    few: few.map(({ lot }) => lot),
  }));
  const worth = ({ required }: { required: Uint8Array }) =>
    required.reduce((sum, must) => sum + must, 0) - gapsOf(required).length;
  return found.length === 0 ? null : found.reduce((a, b) => (worth(b) > worth(a) ? b : a));
}

/** Years in which each period is fed, a bit each, in words of 32 one after the other. */
type FedYears = Uint32Array;
type Seen = { lot: LotTable; fed: FedYears };

const wordYears = 32;
const wordsOf = ({ years }: Limits) => Math.ceil(years / wordYears);

function fedYears({ m2 }: LotTable, limits: Limits): FedYears {
  const { years, periods } = limits;
  const words = wordsOf(limits);
  const fed = new Uint32Array(periods * words);
  for (let year = 0; year < years; year++)
    for (let at = 0; at < periods; at++)
      if (m2[year * periods + at] < Number.POSITIVE_INFINITY)
        fed[at * words + Math.floor(year / wordYears)] |= 1 << (year % wordYears);
  return fed;
}

function together(few: readonly Seen[], limits: Limits): FedYears {
  const fed = new Uint32Array(limits.periods * wordsOf(limits));
  for (const one of few) for (let i = 0; i < fed.length; i++) fed[i] |= one.fed[i];
  return fed;
}

function fedBy(fed: FedYears, limits: Limits): Uint8Array {
  const { periods, enoughYears } = limits;
  const bare = Float64Array.from({ length: periods }, (_, at) => bareYears(fed, at, limits));
  const required = new Uint8Array(periods).fill(1);
  // of periods equally bare, one beside a gap: gaps are to be few
  const rank = (at: number) => {
    const beside = 2 - required[(at + 1) % periods] - required[(at + periods - 1) % periods];
    return bare[at] + beside / 4;
  };
  while (yearsFed(fed, required, limits) < enoughYears) {
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
function widestFew(lots: readonly Seen[], limits: Limits, likes: number): Seen[][] {
  const { years, periods, enoughYears, mostLots } = limits;
  const most = Math.min(mostLots, lots.length);
  const few: Seen[] = [];
  // what each choice so far feeds
  const fed = Array.from({ length: most + 1 }, () => new Uint32Array(periods * wordsOf(limits)));
  const widest: { few: Seen[]; bareness: number }[] = [];
  const more = (from: number, answered: number): void => {
    const depth = few.length;
    if (depth === most) {
      if ((likes & ~answered) !== 0) return;
      let bareness = 0;
      for (let at = 0; at < periods; at++) {
        const bare = bareYears(fed[depth], at, limits);
        bareness += bare + (bare > years - enoughYears ? years : 0);
      }
      if (widest.length === closelySeen && bareness >= widest[closelySeen - 1].bareness) return;
      widest.push({ few: [...few], bareness });
      widest.sort((a, b) => a.bareness - b.bareness);
      widest.length = Math.min(widest.length, closelySeen);
      return;
    }
    for (let at = from; at < lots.length; at++) {
      const own = lots[at].fed;
      for (let i = 0; i < own.length; i++) fed[depth + 1][i] = fed[depth][i] | own[i];
      few.push(lots[at]);
      more(at + 1, answered | lots[at].lot.likes);
      few.pop();
    }
  };
  more(0, 0);
  return widest.map((one) => one.few);
}

/** Years in which a period is not fed. */
function bareYears(fed: FedYears, at: number, limits: Limits): number {
  const words = wordsOf(limits);
  let count = limits.years;
  for (let word = 0; word < words; word++) count -= onesOf(fed[at * words + word]);
  return count;
}

/** Years in which all that is required is fed. */
function yearsFed(fed: FedYears, required: Uint8Array, limits: Limits): number {
  const words = wordsOf(limits);
  let count = 0;
  for (let word = 0; word < words; word++) {
    // years beyond the last are fed by nothing; where nothing is required all are
    let all = ~0;
    if (word === words - 1 && limits.years % wordYears > 0) all = (1 << (limits.years % wordYears)) - 1;
    for (let at = 0; at < required.length; at++) if (required[at]) all &= fed[at * words + word];
    count += onesOf(all);
  }
  return count;
}

/** Bits set in a word (Warren, Hacker's Delight, 2nd ed., fig. 5-2). */
function onesOf(word: number): number {
  let x = word - ((word >>> 1) & 0x55555555);
  x = (x & 0x33333333) + ((x >>> 2) & 0x33333333);
  return Math.imul((x + (x >>> 4)) & 0x0f0f0f0f, 0x01010101) >>> 24;
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
