import { formatDay, type JobMarkState } from '@neckfall/engine';
import { refuse } from '../refusal/refusal.ts';
import { parseDate } from '../values/date.ts';

/** Options of `jobs` alone, as commander gives them. */
export type RawJobsOptions = {
  from?: string;
  to?: string;
  ics?: string;
  done?: string;
  leaveOut?: string;
  putOff?: string;
};

/** Days of which work is asked for; null: all. Without an end, all that follows. */
export type JobsWindow = { from: number; to: number | null } | null;

/** `MM-DD` is the next such day. */
export function readWindow(raw: RawJobsOptions, today: number): JobsWindow {
  if (raw.from === undefined && raw.to === undefined) return null;
  const from = raw.from === undefined ? today : parseDate(raw.from, '--from', today, null);
  const to = raw.to === undefined ? null : parseDate(raw.to, '--to', from, null);
  if (to !== null && to < from)
    throw refuse('to-before-from', {
      field: '--to',
      values: { value: String(raw.to), from: formatDay(from) },
    });
  return { from, to };
}

/** What is said of a job on the command line. */
export type SaidOfJob = { flag: string; job: string; state: JobMarkState; until: number | null };

export function readSaid(raw: RawJobsOptions & { planting?: string }, today: number): SaidOfJob | null {
  const given = [
    { flag: '--done', text: raw.done, state: 'done' },
    { flag: '--leave-out', text: raw.leaveOut, state: 'left-out' },
    { flag: '--put-off', text: raw.putOff, state: 'put-off' },
  ] as const;
  const said = given.filter(({ text }) => text !== undefined);
  if (said.length === 0) return null;
  const [{ flag, text = '', state }, other] = said;
  if (other) throw refuse('one-at-a-time', { field: flag, values: { other: other.flag } });
  if (raw.planting === undefined)
    throw refuse('missing-option', { field: '--planting', expected: '--planting ID' });
  if (state !== 'put-off') return { flag, job: text.trim(), state, until: null };
  const [, job, date] = /^\s*([^:]*?)\s*:\s*(.*?)\s*$/s.exec(text) ?? [];
  if (!job || !date) throw refuse('put-off-form', { field: flag, values: { value: text } });
  const until = parseDate(date, flag, today, null);
  return { flag, job, state, until };
}
