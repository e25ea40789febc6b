import { weekStarts } from './week-starts.ts';

/** First and last week (0…51) of a run of good weeks; `first` > `last` where it crosses New Year. */
export type WeekRun = { first: number; last: number };

/** Runs of true in a year of weeks taken as a circle, in the order of the year. */
export function weekRuns(good: readonly boolean[]): WeekRun[] {
  const weeks = good.length;
  if (good.every(Boolean)) return [{ first: 0, last: weeks - 1 }];
  const runs: WeekRun[] = [];
  for (let first = 0; first < weeks; first++) {
    if (!good[first] || good[(first + weeks - 1) % weeks]) continue;
    let length = 1;
    while (good[(first + length) % weeks]) length++;
    runs.push({ first, last: (first + length - 1) % weeks });
  }
  return runs;
}

/** The same with single weeks filled in whose neighbours are true on both sides: few seasons were tried. */
export function closedUp(good: readonly boolean[]): boolean[] {
  const weeks = good.length;
  return good.map((here, week) => here || (good[(week + 1) % weeks] && good[(week + weeks - 1) % weeks]));
}

/** Weeks of a run, in order. */
export function weeksOf({ first, last }: WeekRun): number[] {
  const weeks: number[] = [];
  for (let week = first; ; week = (week + 1) % weekStarts.length) {
    weeks.push(week);
    if (week === last) return weeks;
  }
}
