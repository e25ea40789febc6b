import {
  civilDate,
  type DailyRecord,
  type DayNumber,
  dayNumber,
  formatDay,
  lastSuchDay,
  parseDay,
  sameDayIn,
} from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { refuse } from '../refusal/refusal.ts';
import { dateLimits, parseDate } from '../values/date.ts';
import { parseNumber } from '../values/number.ts';
import type { RawPlanOptions } from './plan-options.ts';
import type { RawWhyOptions } from './why-options.ts';

/** A crop may be looked at in its store so soon after the start where its days are known, days. */
const leastStored = 60;
/** Seasons of so long ago are still remembered; a record of the weather may go further back. */
const yearsBack = 20;
/** A month alone is told as the middle of it. */
const middleOfMonth = 15;

/** The day on which a thing was seen: one day, or a month of a year that has to be found. */
export type Noticed = { day: DayNumber } | { month: number };

/** `--noticed`; null: not said. */
export function readNoticed({ noticed: text }: RawWhyOptions, today: DayNumber): Noticed | null {
  const field = '--noticed';
  if (text === undefined) return null;
  const [, year, month] = /^\s*(?:(\d{4})-)?(\d{1,2})\s*$/.exec(text) ?? [];
  const full = parseDay(text.trim());
  if (full === null && !(Number(month) >= 1 && Number(month) <= 12))
    throw refuse('why-noticed-form', {
      field,
      values: { value: text },
      expected: 'YYYY-MM-DD, YYYY-MM or MM',
    });
  if (full === null && year === undefined) return { month: Number(month) };
  const day = full ?? middleOf(Number(year), Number(month), today);
  if (day > today) {
    const values = { value: text, today: formatDay(today) };
    throw refuse('why-noticed-ahead', { field, values });
  }
  return { day };
}

/** The middle of a month, of the one under way no later than today. */
function middleOf(year: number, month: number, today: DayNumber): DayNumber {
  const { year: thisYear, month: thisMonth } = civilDate(today);
  const middle = dayNumber(year, month, middleOfMonth);
  return year === thisYear && month === thisMonth ? Math.min(middle, today) : middle;
}

/** Its day where the season is not known yet: the last of such months. */
export function lastNoticed(noticed: Noticed | null, today: DayNumber): DayNumber | null {
  if (noticed === null) return null;
  if ('day' in noticed) return noticed.day;
  const { year } = civilDate(today);
  const thisYear = middleOf(year, noticed.month, today);
  return thisYear <= today ? thisYear : middleOf(year - 1, noticed.month, today);
}

/** Its day in the season of a start: the first of such months in which a crop may have been looked at. */
export function noticedAfter(
  noticed: Noticed | null,
  startDay: DayNumber,
  today: DayNumber,
  text: string | undefined,
): DayNumber | null {
  const field = '--noticed';
  const value = text ?? '';
  if (noticed === null) return null;
  if ('day' in noticed) {
    if (noticed.day > startDay) return noticed.day;
    throw refuse('why-noticed-before', { field, values: { value, start: formatDay(startDay) } });
  }
  const { year } = civilDate(startDay);
  const day = [year, year + 1, year + 2]
    .map((of) => middleOf(of, noticed.month, today))
    .find((of) => of >= startDay + leastStored);
  if (day !== undefined && day <= today) return day;
  throw refuse('why-noticed-ahead', { field, values: { value, today: formatDay(today) } });
}

/** `--year`; null: not said. */
export function readYear(
  { year }: RawWhyOptions,
  today: DayNumber,
  record: DailyRecord | null,
): number | null {
  if (year === undefined) return null;
  const { year: thisYear } = civilDate(today);
  const value = parseNumber(year, { field: '--year', min: 0, max: 9999, whole: true });
  const isRecorded = value <= thisYear && dateLimits(today, record).years.has(value);
  if (isRecorded || (value <= thisYear && value >= thisYear - yearsBack)) return value;
  const values = { value: year, from: String(thisYear - yearsBack), to: String(thisYear) };
  throw refuse('why-year', { field: '--year', values });
}

/** The day of the start as far as it was said: a day, or one like it in a year to be found; null: not at all. */
export type StartSaid = { day: DayNumber } | { like: DayNumber } | null;

export function readStartDay(
  raw: RawPlanOptions & RawWhyOptions,
  today: DayNumber,
  record: DailyRecord | null,
  { say }: Speaker,
): StartSaid {
  const field = '--date';
  const { date: text } = raw;
  if (text === undefined) return null;
  const isFull = !/^\s*\d{2}-\d{2}\s*$/.test(text);
  // any year's day, which refuses what is no date
  const day = parseDate(text, field, dayNumber(civilDate(today).year, 1, 1), null);
  if (!isFull) return { like: day };
  if (raw.year !== undefined)
    throw refuse('contradiction', {
      field: '--year',
      values: { other: `--date ${text}`, why: say('clash.date-says-year') },
    });
  refuseFuture(field, text, day, today);
  const { year } = civilDate(day);
  const from = civilDate(today).year - yearsBack;
  if (year < from && !dateLimits(today, record).years.has(year))
    throw refuse('why-long-ago', { field, values: { value: text, from: String(from) } });
  return { day };
}

/** Nothing can have been seen of a crop that is still to be started. @param field what says its start */
export function refuseFuture(field: string, value: string, startDay: DayNumber, today: DayNumber): void {
  if (startDay < today) return;
  const values = { value, start: formatDay(startDay), today: formatDay(today) };
  throw refuse('why-not-started', { field, values });
}

/** A day in the year asked for, else the last such up to `latest`. */
export function startIn(like: DayNumber, year: number | null, latest: DayNumber): DayNumber {
  return year === null ? lastSuchDay(like, latest) : sameDayIn(year, like);
}
