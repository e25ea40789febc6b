import type { DateOrder } from '../found.ts';
import { dayOfParts } from './day-of-parts.ts';

/** Numbers of dates whose order is open, a row each; 0 where a row has none. */
export type OpenDates = { a: Int32Array; b: Int32Array; c: Int32Array };

/** How files of a kind are written: what is guessed where the dates themselves leave it open. */
export type Habits = { isAmerican: boolean };

/**
 * The order of day, month and year in dates such as 3/4/24. Told where a number can be a day alone; else guessed by the
 * order in which the days follow each other, else by the habits of the file.
 */
export function dateOrderOf(dates: OpenDates, habits: Habits): { order: DateOrder; isGuessed: boolean } {
  const { a, b, c } = dates;
  let firstIsDay = 0;
  let secondIsDay = 0;
  let firstIsYear = 0;
  let thirdIsYear = 0;
  for (let at = 0; at < a.length; at++) {
    if (a[at] === 0 && b[at] === 0) continue;
    if (c[at]! > 31) thirdIsYear++;
    if (a[at]! > 31 || a[at] === 0) firstIsYear++;
    else if (a[at]! > 12) firstIsDay++;
    if (b[at]! > 12) secondIsDay++;
  }
  if (firstIsYear > 0 && thirdIsYear === 0) return { order: 'ymd', isGuessed: false };
  if (thirdIsYear > 0 && firstIsDay + secondIsDay > 0) {
    return { order: firstIsDay >= secondIsDay ? 'dmy' : 'mdy', isGuessed: firstIsDay > 0 && secondIsDay > 0 };
  }
  const orders: DateOrder[] = [];
  if (firstIsDay === 0 || secondIsDay > 0) orders.push('mdy');
  if (secondIsDay === 0 || firstIsDay > 0) orders.push('dmy');
  if (thirdIsYear === 0 && secondIsDay === 0) orders.push('ymd');
  if (!habits.isAmerican) orders.sort();
  let best = orders[0] ?? 'dmy';
  let least = Number.POSITIVE_INFINITY;
  for (const order of orders) {
    const days = travelled(dates, order);
    if (days < least) [best, least] = [order, days];
  }
  return { order: best, isGuessed: orders.length > 1 };
}

/** Days between one date and the next, summed; what is no date counts a year. */
function travelled({ a, b, c }: OpenDates, order: DateOrder): number {
  let sum = 0;
  let before = Number.NaN;
  for (let at = 0; at < a.length; at++) {
    if (a[at] === 0 && b[at] === 0) continue;
    const day = dayOfParts(order, a[at]!, b[at]!, c[at]!);
    if (Number.isNaN(day)) sum += 366;
    else if (!Number.isNaN(before)) sum += Math.abs(day - before);
    before = day;
  }
  return sum;
}
