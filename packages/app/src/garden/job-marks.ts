import { type DayNumber, formatDay, type Garden, type JobMark, type JobMarkState } from '@neckfall/engine';
import { newId } from './new-id.ts';

/** What became of the work on a planting, in the order in which it was said. */
export function marksOf({ jobs }: Pick<Garden, 'jobs'>, plantingId: string): JobMark[] {
  return jobs.filter((mark) => mark.plantingId === plantingId);
}

/** What is said of a piece of work on a day. @param until the day to which it is put off */
export function markOf(
  job: string,
  state: JobMarkState,
  day: DayNumber,
  until: DayNumber | null = null,
): JobMark {
  const mark: JobMark = { id: newId(), plantingId: null, job, state, date: formatDay(day) };
  return until === null ? mark : { ...mark, until: formatDay(until) };
}

/** The garden with what became of a piece of work; it takes the place of what was said of the same before. */
export function withMark(garden: Garden, plantingId: string, mark: JobMark): Garden {
  const { jobs } = withoutMark(garden, plantingId, mark.job);
  return { ...garden, jobs: [...jobs, { ...mark, plantingId }] };
}

/** The garden in which nothing was said of a piece of work. */
export function withoutMark(garden: Garden, plantingId: string, job: string): Garden {
  return {
    ...garden,
    jobs: garden.jobs.filter((mark) => mark.plantingId !== plantingId || mark.job !== job),
  };
}
