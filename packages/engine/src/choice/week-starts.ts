import { civilDate, dayNumber } from '../calendar/index.ts';

/** Days of the year on which starts are tried: 1, 8, …, 358. */
export const weekStarts: readonly number[] = Array.from({ length: 52 }, (_, week) => 1 + 7 * week);

/** Day number of a day of a year. */
export function dayInYear(year: number, dayOfYear: number): number {
  return dayNumber(year, 1, 1) + dayOfYear - 1;
}

/** The 52 week starts from a day on: the same dates whatever the day, so that answers don't wander with it. */
export function weekStartsFrom(day: number): number[] {
  const { year } = civilDate(day);
  const of = (year: number) => weekStarts.map((dayOfYear) => dayInYear(year, dayOfYear));
  const thisYear = of(year).filter((start) => start >= day);
  return [...thisYear, ...of(year + 1).slice(0, weekStarts.length - thisYear.length)];
}

/** Whether a week start has an even place in its year: those are tried first. */
export function isEvenWeek(startDay: number): boolean {
  return ((startDay - dayInYear(civilDate(startDay).year, 1)) / 7) % 2 === 0;
}
