import { dayNumber } from '../calendar/index.ts';

/** Days of the year on which starts are tried: 1, 8, …, 358. */
export const weekStarts: readonly number[] = Array.from({ length: 52 }, (_, week) => 1 + 7 * week);

/** Day number of a day of a year. */
export function dayInYear(year: number, dayOfYear: number): number {
  return dayNumber(year, 1, 1) + dayOfYear - 1;
}
