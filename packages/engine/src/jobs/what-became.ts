import { type DayNumber, parseDay } from '../calendar/index.ts';
import type { JobMark } from '../garden/index.ts';
import type { Due } from './due.ts';
import type { JobDays, JobState } from './job.ts';

/** What a grower said last of a piece of work; null: nothing that holds. */
export type Became = { state: 'done' | 'left-out' } | { state: 'put-off'; until: DayNumber } | null;

/**
 * The last mark of a job up to today.
 *
 * @param recursFrom for work that comes round again: marks of before that day, and not put off to it, were of an earlier time
 */
export function becameOf(
  id: string,
  marks: readonly JobMark[],
  today: DayNumber,
  recursFrom: DayNumber | null = null,
): Became {
  const last = marks.findLast(({ job, date, until = date }) => {
    const day = parseDay(date);
    const holdsTo = parseDay(until);
    if (job !== id || day === null || holdsTo === null || day > today) return false;
    return recursFrom === null || holdsTo >= recursFrom;
  });
  if (!last) return null;
  if (last.state !== 'put-off') return { state: last.state };
  const until = last.until === undefined ? null : parseDay(last.until);
  return until === null ? null : { state: 'put-off', until };
}

/** A job put off begins on that day and lasts as long as it would have; none comes before its crop. */
export function putOff<Days extends JobDays>(days: Days, became: Became, start: DayNumber): Days {
  if (became?.state !== 'put-off') return days;
  const by = Math.max(became.until, Math.min(start, days.from)) - days.from;
  return { ...days, from: days.from + by, best: days.best + by, to: days.to + by };
}

export function stateOf({ from, to, isDone }: Due, became: Became, today: DayNumber): JobState {
  if (became?.state === 'left-out') return 'left-out';
  if (became?.state === 'done' || isDone) return 'done';
  return today < from ? 'coming' : today > to ? 'gone-by' : 'now';
}
