import { civilDate, dayOfYear, daysInYear, type TodayAnswer, type WhenAnswer } from '@neckfall/engine';
import { daysUntil } from './days-until.ts';

/**
 * What a start is worth today, in keeping with the windows of the same page: those were looked for week by week, and
 * today's fortnight by fortnight, so that where every other year is good each may find what the other misses.
 */
export function withWindows({ windows }: WhenAnswer, now: TodayAnswer, today: number): TodayAnswer {
  const inYear = daysInYear(civilDate(today).year);
  const to = (day: number) => daysUntil(dayOfYear(today), day, inYear);
  const open = windows.filter((window) => to(window.to) <= daysUntil(window.from, window.to, inYear));
  if (open.length > 0 || now.stillGoodUntil !== null) {
    const ends = open.map((window) => today + to(window.to));
    return { ...now, stillGoodUntil: Math.max(now.stillGoodUntil ?? today, ...ends), nextFrom: null };
  }
  const begins = windows.map(({ from }) => today + to(from));
  if (now.nextFrom !== null) begins.push(now.nextFrom);
  return { ...now, nextFrom: begins.length > 0 ? Math.min(...begins) : null };
}
