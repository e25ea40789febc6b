import type { JobDays, JobWhy } from './job.ts';

/** A job as its rule has it, before anybody said what became of it. */
export type Due = JobDays & {
  why: JobWhy;
  /** Which of several it is; 1 where left out. */
  number?: number;
  /** Whether what was noted shows that it is done. */
  isDone?: boolean;
};

/** A job with its days in order: whatever weather shifts, none begins after its best day or ends before it. */
export function due(
  { from, best, to }: JobDays,
  code: string,
  values: JobWhy['values'] = {},
  more: Pick<Due, 'number' | 'isDone'> = {},
): Due {
  const day = Math.round(best);
  const days = { from: Math.min(Math.round(from), day), best: day, to: Math.max(Math.round(to), day) };
  return { ...days, why: { code, values }, ...more };
}

/** The days that lie within two others; null where none does. */
export function within({ from, best, to }: JobDays, first: number, last: number): JobDays | null {
  if (to < first || from > last || first > last) return null;
  const inside = (day: number) => Math.min(Math.max(day, first), last);
  return { from: inside(from), best: inside(best), to: inside(to) };
}
