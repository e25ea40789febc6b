import type { DayNumber } from '../../calendar/index.ts';
import { type DailyRecord, emptyRecord, type RecordField } from '../daily-record.ts';

/** Days of a file as they are met, in any order; a later value of a day takes the place of an earlier one. */
export type DaysMet = Map<DayNumber, Partial<Record<RecordField, number>>>;

/** What is known of a day so far; from here on the day has a row. */
export function dayMet(days: DaysMet, day: DayNumber): Partial<Record<RecordField, number>> {
  let values = days.get(day);
  if (values === undefined) {
    values = {};
    days.set(day, values);
  }
  return values;
}

/** From the first day that was met to the last. */
export function recordOfDays(days: DaysMet): DailyRecord {
  let first = Number.POSITIVE_INFINITY;
  let last = Number.NEGATIVE_INFINITY;
  for (const day of days.keys()) {
    first = Math.min(first, day);
    last = Math.max(last, day);
  }
  const record = emptyRecord(first, last - first + 1);
  for (const [day, values] of days) {
    for (const [name, value] of Object.entries(values)) {
      const field = name as RecordField;
      record[field][day - first] = value;
      record.known[field][day - first] = 1;
    }
  }
  return record;
}
