import { type DayNumber, dayNumber } from '../../calendar/index.ts';

/** The year that the days of a typical year are given; it has no 29 February, as those years have none. */
const typicalYearStands = 2001;

/** A row of an hourly file of a year: minutes from midnight of its printed day, whole rows one after the other. */
export type HourRow = { year: number; month: number; date: number; minute: number };

/** Whether months of different years were put together: one is followed by a month of a year that isn't the next. */
export function isTypicalYear(rows: readonly HourRow[]): boolean {
  for (let at = 1; at < rows.length; at++) {
    const before = rows[at - 1]!;
    const row = rows[at]!;
    if (row.month === before.month) continue;
    // as months went by, or a gap in a record: never back, never a year or more ahead
    const months = (row.year - before.year) * 12 + row.month - before.month;
    if (months < 0 || months >= 12) return true;
  }
  return false;
}

/** The day of a row; null: 29 February of a typical year. */
export function dayOfRow({ year, month, date }: HourRow, isTypical: boolean): DayNumber | null {
  if (isTypical && month === 2 && date === 29) return null;
  return dayNumber(isTypical ? typicalYearStands : year, month, date);
}
