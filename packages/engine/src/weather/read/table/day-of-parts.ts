import { dayNumber, daysInYear, isLeapYear } from '../../../calendar/index.ts';
import type { DateOrder } from '../found.ts';
import { firstYear, lastYear } from '../years.ts';
import { fullYear } from './date-cells.ts';

const lengths = [31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/** Day number of three numbers in an order; NaN for a day that does not exist, or of a year no record is of. */
export function dayOfParts(order: DateOrder, a: number, b: number, c: number): number {
  const [year, month, day] = order === 'ymd' ? [a, b, c] : order === 'dmy' ? [c, b, a] : [c, a, b];
  return dayOf(year < 100 ? fullYear(year, 2) : year, month, day);
}

export function dayOf(year: number, month: number, day: number): number {
  if (!(year >= firstYear && year <= lastYear && month >= 1 && month <= 12 && day >= 1)) return Number.NaN;
  if (day > lengths[month - 1]! || (month === 2 && day === 29 && !isLeapYear(year))) return Number.NaN;
  return dayNumber(year, month, day);
}

/** Day number of the day 1…366 of a year. */
export function dayOfYearDay(year: number, day: number): number {
  if (!(year >= firstYear && year <= lastYear && day >= 1 && day <= daysInYear(year))) return Number.NaN;
  return dayNumber(year, 1, 1) + day - 1;
}
