import type { SeasonSummary, Verdict } from '@neckfall/engine';

/** How the years tried ended, the commonest first. */
export function seasonEnds({ seasonShares }: Pick<SeasonSummary, 'seasonShares'>): [Verdict, number][] {
  return (Object.entries(seasonShares) as [Verdict, number][])
    .filter(([, share]) => share > 0)
    .toSorted((a, b) => b[1] - a[1]);
}
