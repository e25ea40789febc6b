import type { DayNumber, DayRow, SeasonSummary } from '@neckfall/engine';
import { fortnightMeanC } from '../facts/index.ts';
import { type WeekCode, weekOf } from './week-of.ts';

/** A stretch of days that ask the same of a grower. */
export type SeasonJob = { code: WeekCode; from: DayNumber; to: DayNumber };

/** Days before the start from which a season is told, and after tops are over until bulbs are stored. */
const before = 20;
const after = 41;
/** Without tops going over, a season is told this far. */
const longest = 300;
/** A shorter spell of cold is no winter, of warmth no spring; any other is told from some days on. */
const shortestDays = { winter: 21, grow: 21, wait: 4 } as const;

/** What a season asks from its preparation to the store, in a middling year. */
export function seasonJobs(summary: SeasonSummary, rows: readonly DayRow[]): SeasonJob[] {
  const { plan, neckFall } = summary;
  const last = neckFall.days
    ? neckFall.days.p50 + after
    : Math.min(plan.startDay + longest, rows.at(-1)?.day ?? 0);
  const jobs: SeasonJob[] = [];
  for (let day = plan.startDay - before; day <= last; day++) {
    const code = weekOf(summary, { day, lostShare: 0, tempMeanC: fortnightMeanC(rows, day) });
    const current = jobs.at(-1);
    if (current?.code === code) current.to = day;
    else jobs.push({ code, from: day, to: day });
  }
  return joined(jobs);
}

/** Spells too short to be told go to the one before; equal neighbours are one. */
function joined(jobs: readonly SeasonJob[]): SeasonJob[] {
  const told: SeasonJob[] = [];
  for (const job of jobs) {
    const previous = told.at(-1);
    const shortest = job.code in shortestDays ? shortestDays[job.code as keyof typeof shortestDays] : 1;
    const isBrief = job.to - job.from + 1 < shortest;
    if (previous && (previous.code === job.code || isBrief)) previous.to = job.to;
    else told.push({ ...job });
  }
  return told;
}
