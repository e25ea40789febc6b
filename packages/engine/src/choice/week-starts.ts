import {
  type CommonYearDay,
  civilDate,
  climateDayOf,
  type DayNumber,
  dayNumber,
  firstDayOfMonth,
  isLeapYear,
} from '../calendar/index.ts';

/** Days of a common year on which starts are tried: 1, 8, …, 358. */
export const weekStarts: readonly CommonYearDay[] = Array.from({ length: 52 }, (_, week) => 1 + 7 * week);

/** 1 January 2027, of a year without a leap day: starts are weighed in it, lest a leap day settle what nothing else does. */
export const commonYearStart: DayNumber = 20_819;

/** The date on which a day of a common year falls: a leap day shifts none of them. @param dayOfYear 1…365 */
export function dayInYear(year: number, dayOfYear: CommonYearDay): DayNumber {
  const leapDay = isLeapYear(year) && dayOfYear > firstDayOfMonth[2] ? 1 : 0;
  return dayNumber(year, 1, 1) + dayOfYear - 1 + leapDay;
}

/** The next of each week start from a day on, in the order of the year: the same dates whatever the day. */
export function weeksAhead(day: DayNumber): DayNumber[] {
  const { year } = civilDate(day);
  return weekStarts.map((dayOfYear) => {
    const thisYear = dayInYear(year, dayOfYear);
    return thisYear >= day ? thisYear : dayInYear(year + 1, dayOfYear);
  });
}

/** Which of the weeks a day lies in, 0…51; the year's last days belong to the last. */
export function weekOf(day: DayNumber): number {
  return Math.min(weekStarts.length - 1, Math.floor(climateDayOf(day) / 7));
}
