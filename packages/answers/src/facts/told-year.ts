import { civilDate, type DayNumber, dayNumber } from '@neckfall/engine';

/** First day of a year told without a crop: the year's summer stands in its middle. Day number. */
export function plainYearStart(today: DayNumber, latitudeDeg: number): DayNumber {
  const { year, month } = civilDate(today);
  if (latitudeDeg >= 0) return dayNumber(year, 1, 1);
  return dayNumber(month >= 7 ? year : year - 1, 7, 1);
}

/** First day and length of a year told with a crop in it: whole months, a year at least. */
export function cropYear(startDay: DayNumber, lastDay: DayNumber): { firstDay: DayNumber; days: number } {
  const { year, month } = civilDate(startDay);
  const firstDay = dayNumber(year, month, 1);
  const end = civilDate(lastDay);
  const afterLast = end.month === 12 ? dayNumber(end.year + 1, 1, 1) : dayNumber(end.year, end.month + 1, 1);
  return { firstDay, days: Math.max(365, afterLast - firstDay) };
}
