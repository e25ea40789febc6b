import type { DayNumber } from '../calendar/index.ts';
import type { Job } from './job.ts';
import { jobTable } from './job-table.ts';

/** What to do in a week, most urgent first; where it asks for nothing, what comes next. */
export type WeekJobs = { due: Job[]; next: Job[] };

/** A week is planned by no more. */
const mostDue = 5;
const mostNext = 3;
const weekDays = 7;

/** The jobs of a week, the most urgent first; where there are none, what comes next. @param today first day of the week */
export function jobsInWeek(jobs: readonly Job[], today: DayNumber): WeekJobs {
  const open = jobs.filter(({ state, to }) => (state === 'now' || state === 'coming') && to >= today);
  const due = open.filter(({ from }) => from < today + weekDays).sort((a, b) => urgency(a) - urgency(b));
  if (due.length > 0) return { due: due.slice(0, mostDue), next: [] };
  return { due, next: open.toSorted((a, b) => a.from - b.from).slice(0, mostNext) };
}

/** Windows that close come first, and before them those in which delay does more harm. */
function urgency({ name, to }: Job): number {
  return to - jobTable[name].pressesDays;
}
