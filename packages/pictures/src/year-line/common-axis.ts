import { civilDate, type DayNumber, dayNumber } from '@neckfall/engine';

/** From the longest day of the north, 21 June, to that of the south, 21 December, days. */
export const halfYearDays = 183;

/** One of the years that stand under each other. */
type OnAxis = {
  /** First and last day of its crop, in whatever year. */
  crop: { from: DayNumber; to: DayNumber };
  /** So many days later on the calendar than the axis says: half a year for a place that is lined up by its longest day. */
  shiftDays: number;
};

/** An axis for several years: whole months, a year at least. */
export type CommonAxis = { firstDay: DayNumber; days: number };

/** The first that will do is taken, and the calendar's own year before any other. */
const firstMonths = [1, 7, 3, 9, 2, 8, 4, 10, 5, 11, 6, 12] as const;
const leastDays = 365;

/**
 * The shortest axis on which every crop stands whole. A crop is of any year, since many are tried: each is put at the
 * first time its start comes round.
 *
 * @param year in which the axis begins
 */
export function commonAxisOf(lines: readonly OnAxis[], year: number): CommonAxis {
  const axes = firstMonths.map((month): CommonAxis => {
    const firstDay = dayNumber(year, month, 1);
    const ends = lines.map(({ crop, shiftDays }) => {
      const ownFirst = firstDay + shiftDays;
      return byYears(crop.to, yearsToAxis(crop.from, ownFirst)) - shiftDays;
    });
    const last = civilDate(Math.max(firstDay, ...ends));
    const afterLast =
      last.month === 12 ? dayNumber(last.year + 1, 1, 1) : dayNumber(last.year, last.month + 1, 1);
    return { firstDay, days: Math.max(leastDays, afterLast - firstDay) };
  });
  return axes.reduce((a, b) => (b.days < a.days ? b : a));
}

/** Whole years, of either sign, that bring a day to the first time it comes round from `firstDay` on. */
export function yearsToAxis(day: DayNumber, firstDay: DayNumber): number {
  const years = civilDate(firstDay).year - civilDate(day).year;
  return byYears(day, years) >= firstDay ? years : years + 1;
}

/** The same date so many years later; 29 February becomes the 28th where there is none. */
export function byYears(day: DayNumber, years: number): DayNumber {
  const { year, month, day: date } = civilDate(day);
  const first = dayNumber(year + years, month, 1);
  const same = first + date - 1;
  return civilDate(same).month === month ? same : same - 1;
}
