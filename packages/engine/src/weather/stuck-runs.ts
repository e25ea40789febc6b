import type { DailyRecord } from './daily-record.ts';

/** So many days with one and the same minimum and maximum are no weather (common practice, no source). */
export const stuckDays = 10;

/** Runs of at least {@link stuckDays} days with the very same minimum and maximum; `at` counts from the first day. */
export function stuckRuns({ days, tempMinC, tempMaxC, known }: DailyRecord): { at: number; days: number }[] {
  const runs: { at: number; days: number }[] = [];
  const hasBoth = (at: number) => known.tempMinC[at] === 1 && known.tempMaxC[at] === 1;
  let from = 0;
  for (let at = 1; at <= days; at++) {
    const isAlike =
      at < days &&
      hasBoth(at) &&
      hasBoth(from) &&
      tempMinC[at] === tempMinC[from] &&
      tempMaxC[at] === tempMaxC[from];
    if (isAlike) continue;
    if (at - from >= stuckDays) runs.push({ at: from, days: at - from });
    from = at;
  }
  return runs;
}
