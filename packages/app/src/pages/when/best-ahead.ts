import { civilDate, dayNumber, dayOfYear, daysInYear, type WhenAnswer } from '@neckfall/engine';
import { daysUntil } from './days-until.ts';

/** Starts are tried a week apart, so a window ends a week after its last start. */
const weekDays = 7;

/**
 * The day to start, from today on: the best of the window that is open or comes next, today where its best has gone
 * by. Without a window the start that does least badly.
 */
export function bestAhead({ starts, windows, best }: WhenAnswer, today: number): number {
  const { year } = civilDate(today);
  const ahead = (day: number) => {
    const soon = dayNumber(year, 1, 1) + day - 1;
    return soon >= today ? soon : dayNumber(year + 1, 1, 1) + day - 1;
  };
  if (windows.length === 0) {
    const least = starts.find(({ dayOfYear }) => dayOfYear === best)?.summary;
    return least && least.onset.share > 0 ? ahead(best) : today;
  }
  const days = windows.map(({ from, to, best: bestOfWindow }) => {
    const day = ahead(bestOfWindow);
    const left = daysUntil(dayOfYear(today), to, daysInYear(year)) + weekDays;
    const isOpen = daysUntil(from, dayOfYear(today), daysInYear(year)) <= lengthOf(from, to, year);
    return isOpen && day - today >= left ? today : day;
  });
  return Math.min(...days);
}

function lengthOf(from: number, to: number, year: number): number {
  return daysUntil(from, to, daysInYear(year)) + weekDays;
}
