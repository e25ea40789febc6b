import type { SeasonSummary, Verdict } from '@neckfall/engine';

/** How the years tried ended, the commonest first. */
export function seasonEnds({ seasonShares }: Pick<SeasonSummary, 'seasonShares'>): [Verdict, number][] {
  const ends = (Object.entries(seasonShares) as [Verdict, number][])
    .filter(([, share]) => share > 0)
    .toSorted((a, b) => b[1] - a[1]);
  // told in tenths, halves rounded up could come to eleven: the least of them is told as the tenth below
  const tenths = ends.reduce((sum, [, share]) => sum + Math.round(10 * share), 0);
  const last = tenths > 10 ? ends.findLastIndex(([, share]) => share > 0.1 && isRaised(share)) : -1;
  return ends.map(([verdict, share], at) => [verdict, at === last ? Math.floor(10 * share) / 10 : share]);
}

const isRaised = (share: number) => Math.round(10 * share) > 10 * share;
