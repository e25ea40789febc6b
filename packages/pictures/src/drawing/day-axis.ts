import { civilDate, dayNumber } from '@neckfall/engine';

/** Days laid along a line of pixels. `firstDay` is a day number, so a year may begin at any day and cross New Year. */
export type DayAxis = { firstDay: number; days: number; left: number; right: number };

/** Room kept free at both ends, px; the same for every picture, so that they line up under each other. */
const sidePad = 6;

export function dayAxis(firstDay: number, days: number, width: number): DayAxis {
  return { firstDay, days, left: sidePad, right: width - sidePad };
}

/** x of the morning of a day, px. */
export function xOfDay({ firstDay, days, left, right }: DayAxis, day: number): number {
  return left + ((day - firstDay) / days) * (right - left);
}

/** Whole day under an x, kept on the axis; the inverse of {@link xOfDay} for a pointer. */
export function dayAtX({ firstDay, days, left, right }: DayAxis, x: number): number {
  const day = Math.floor(((x - left) / (right - left)) * days);
  return firstDay + Math.max(0, Math.min(days - 1, day));
}

export type MonthSpan = { month: number; from: number; to: number };

/** Months (1…12) with the part of them that lies on the axis, px. */
export function monthSpans(axis: DayAxis): MonthSpan[] {
  const spans: MonthSpan[] = [];
  const end = axis.firstDay + axis.days;
  let day = axis.firstDay;
  while (day < end) {
    const { year, month } = civilDate(day);
    const next = month === 12 ? dayNumber(year + 1, 1, 1) : dayNumber(year, month + 1, 1);
    spans.push({ month, from: xOfDay(axis, day), to: xOfDay(axis, Math.min(next, end)) });
    day = next;
  }
  return spans;
}
