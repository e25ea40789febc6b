import { dayNumber } from '@neckfall/engine';

/** The machine's date as a day number: the only clock there is. */
export function today(now = new Date()): number {
  return dayNumber(now.getFullYear(), now.getMonth() + 1, now.getDate());
}
