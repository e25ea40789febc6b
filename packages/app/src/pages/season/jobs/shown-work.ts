import { jobName } from '@neckfall/answers';
import type { WorkMark } from '@neckfall/pictures';
import { voice } from '../../../state/settings.ts';
import type { SeasonAhead } from '../../../worker/season-ahead.ts';
import { workOf } from './work-of.ts';

/** This week's work and the coming as the year line marks it, under the numbers of its sentences. */
export function shownWork({ jobs, stand: { day } }: Pick<SeasonAhead, 'jobs' | 'stand'>): WorkMark[] {
  const { due, coming } = workOf(jobs, day);
  return [...due, ...coming].map(({ number, job }) => ({
    number,
    day: number <= due.length ? day : Math.max(day, job.from),
    text: jobName(job, voice.value),
  }));
}

/** All work of the season by the day on which it is best done: the numbers of the sheet. */
export function sheetWork({ jobs }: Pick<SeasonAhead, 'jobs'>): WorkMark[] {
  return jobs.map((job, at) => ({ number: at + 1, day: job.best, text: jobName(job, voice.value) }));
}
