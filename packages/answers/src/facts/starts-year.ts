import { civilDate, dayNumber, type WhenAnswer, weekOf } from '@neckfall/engine';

/** A year of starts is shown at a time. */
export const startsYearDays = 365;

/** Whole months shown before today, the likeliest first: so that a window that is open is seen whole. */
const monthsBack = [2, 3, 1, 4] as const;

/**
 * First day of the year of starts that holds `day`: the first of a month some months before it, chosen so that no
 * window is cut in two.
 */
export function startsYearFirst({ starts }: WhenAnswer, day: number): number {
  const { year, month } = civilDate(day);
  const firsts = monthsBack.map((back) =>
    month > back ? dayNumber(year, month - back, 1) : dayNumber(year - 1, month - back + 12, 1),
  );
  const goodAt = (first: number) => {
    return starts[weekOf(first)].summary.seasonShares.good;
  };
  return firsts.reduce((a, b) => (goodAt(b) < goodAt(a) ? b : a));
}

export function isInStartsYear(firstDay: number, day: number): boolean {
  return day >= firstDay && day < firstDay + startsYearDays;
}
