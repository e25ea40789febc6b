import { civilDate, type DailyRecord, dayNumber, formatDay, parseDay, recordFields } from '@neckfall/engine';
import { refuse } from '../refusal/refusal.ts';

/** Days that may be asked for. */
export type DateLimits = {
  from: number;
  to: number;
  /** Years that may be asked for besides. */
  years: ReadonlySet<number>;
};

const firstYearOfToday = 1950;
const lastYearOfToday = 2090;
const yearsBack = 2;
const yearsAhead = 5;

/** Two years back to five ahead of today, and the years of which the record knows a day. */
export function dateLimits(today: number, record: DailyRecord | null = null): DateLimits {
  const { year, month, day } = civilDate(today);
  const shifted = (years: number) =>
    // 29 February of a common year becomes 1 March
    dayNumber(year + years, month, day);
  return { from: shifted(-yearsBack), to: shifted(yearsAhead), years: yearsOf(record) };
}

function yearsOf(record: DailyRecord | null): ReadonlySet<number> {
  const years = new Set<number>();
  for (let at = 0; record && at < record.days; at++) {
    if (recordFields.some((field) => record.known[field][at]))
      years.add(civilDate(record.firstDay + at).year);
  }
  return years;
}

/** `--today`: a full date. */
export function parseToday(text: string): number {
  const day = fullDate(text, '--today', 'full-date-form');
  const { year } = civilDate(day);
  if (year < firstYearOfToday || year > lastYearOfToday) {
    throw refuse('today-limits', { field: '--today', values: { value: text } });
  }
  return day;
}

/**
 * A date of the grower's: `YYYY-MM-DD`, or `MM-DD` for the first such day at or after `from`
 * (for 29 February the next leap year's). Without limits any day will do.
 */
export function parseDate(text: string, field: string, from: number, limits: DateLimits | null): number {
  const short = /^(\d{2})-(\d{2})$/.exec(text.trim());
  const day = short
    ? nextSuchDay(text, field, Number(short[1]), Number(short[2]), from)
    : fullDate(text, field, 'date-form');
  if (limits && (day < limits.from || day > limits.to) && !limits.years.has(civilDate(day).year)) {
    throw refuse('date-limits', {
      field,
      values: { value: text, from: formatDay(limits.from), to: formatDay(limits.to) },
      expected: `${formatDay(limits.from)}…${formatDay(limits.to)}`,
    });
  }
  return day;
}

function nextSuchDay(text: string, field: string, month: number, dayOfMonth: number, from: number): number {
  const firstYear = civilDate(from).year;
  // leap years lie at most eight years apart
  for (let year = firstYear; year <= firstYear + 9; year++) {
    const day = existingDay(year, month, dayOfMonth);
    if (day !== null && day >= from) return day;
  }
  throw noSuchDay(text, field, '03-25');
}

function fullDate(text: string, field: string, formCode: 'date-form' | 'full-date-form'): number {
  const trimmed = text.trim();
  const day = parseDay(trimmed);
  if (day !== null) return day;
  if (/^\d{4}-\d{2}-\d{2}$/.test(trimmed)) throw noSuchDay(text, field, '2027-03-25');
  throw refuse(formCode, {
    field,
    values: { value: text, example: '2027-03-25' },
    expected: formCode === 'date-form' ? 'MM-DD or YYYY-MM-DD' : 'YYYY-MM-DD',
  });
}

function existingDay(year: number, month: number, dayOfMonth: number): number | null {
  const two = (value: number) => String(value).padStart(2, '0');
  return parseDay(`${year}-${two(month)}-${two(dayOfMonth)}`);
}

function noSuchDay(text: string, field: string, example: string) {
  return refuse('date-not-in-calendar', { field, values: { value: text, example } });
}
