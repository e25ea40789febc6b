import { isDate } from './observation.ts';
import { givenId, type RestoreEntry, type Unknown } from './restoring.ts';

/** What a grower can say of a piece of work. */
export const jobMarkStates = ['done', 'left-out', 'put-off'] as const;
/** One of {@link jobMarkStates}. */
export type JobMarkState = (typeof jobMarkStates)[number];

/** What became of a piece of work on a planting, as its grower says. */
export type JobMark = Unknown & {
  id: string;
  /** Id of a planting of the same garden; null: of none that it has. */
  plantingId: string | null;
  /** Which piece of work, such as `lift` or `feed-2`. */
  job: string;
  state: JobMarkState;
  /** ISO date: the day it was done, or on which the rest was said. */
  date: string;
  /** ISO date to which it was put off. */
  until?: string;
};

/** Longest name of a piece of work, characters. */
const longestJob = 60;

/** A mark that names no work, no day or no state of it says nothing. */
export const restoreJobMark: RestoreEntry<JobMark> = (found, path, tell) => {
  const { job, date, until } = found;
  const state = jobMarkStates.find((word) => word === found.state);
  if (typeof job !== 'string' || job.trim() === '' || job.length > longestJob) return null;
  if (!isDate(date) || state === undefined) return null;
  if (state === 'put-off' && !isDate(until)) return null;
  const mark: JobMark = {
    ...found,
    id: givenId(found),
    plantingId: typeof found.plantingId === 'string' ? found.plantingId : null,
    job,
    state,
    date,
  };
  if (until !== undefined && (state !== 'put-off' || !isDate(until))) {
    delete mark.until;
    tell('emptied', `${path}.until`, until);
  }
  return mark;
};
