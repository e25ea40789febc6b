import type { ClimateDay, DayNumber } from './day-kinds.ts';
import { civilDate } from './day-number.ts';

/** A climate year has 365 days; 29 February shares the climate of the 28th. */
export const climateYearDays = 365;

/** Days in each month of a year without 29 February. */
export const monthLengths: readonly number[] = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/** Climate day (0 = 1 January) on which each month (0 = January) begins. */
export const firstDayOfMonth: readonly ClimateDay[] = monthLengths.map((_, month) =>
  monthLengths.slice(0, month).reduce((sum, length) => sum + length, 0),
);

/** Climate day 0…364 of a day number. */
export function climateDayOf(day: DayNumber): ClimateDay {
  const { month, day: dayOfMonth } = civilDate(day);
  return firstDayOfMonth[month - 1] + Math.min(dayOfMonth, monthLengths[month - 1]) - 1;
}

const juneSolstice: ClimateDay = 171;
const decemberSolstice: ClimateDay = 354;

/** Days since the longest day of a hemisphere, 0…364. */
export function daysSinceLongest(day: DayNumber, latitudeDeg: number): number {
  const longest = latitudeDeg < 0 ? decemberSolstice : juneSolstice;
  return (climateDayOf(day) - longest + climateYearDays) % climateYearDays;
}

/** Month 0…11 of a climate day 0…364. */
export function monthOfClimateDay(climateDay: ClimateDay): number {
  let month = 11;
  while (firstDayOfMonth[month] > climateDay) month--;
  return month;
}
