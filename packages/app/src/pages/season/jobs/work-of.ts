import { type DayNumber, type Job, jobsInWeek } from '@neckfall/engine';

/** A piece of work under the number by which page and picture know it. */
export type NumberedJob = { number: number; job: Job };

/** The work of a season as it stands on a day. */
export type Work = {
  /** Of this week, most urgent first. */
  due: NumberedJob[];
  /** After this week, by the day on which it begins. */
  coming: NumberedJob[];
  /** Done, left out or gone by, by day. */
  past: Job[];
};

export function workOf(jobs: readonly Job[], today: DayNumber): Work {
  const { due } = jobsInWeek(jobs, today);
  const isOpen = ({ state, to }: Job) => (state === 'now' || state === 'coming') && to >= today;
  const coming = jobs.filter((job) => isOpen(job) && !due.includes(job)).sort((a, b) => a.from - b.from);
  const numbered = [...due, ...coming].map((job, at) => ({ number: at + 1, job }));
  return {
    due: numbered.slice(0, due.length),
    coming: numbered.slice(due.length),
    past: jobs.filter((job) => !isOpen(job)),
  };
}
