import type { DayNumber, DayOfYear } from './day-kinds.ts';

/**
 * Dates inside the engine are whole day numbers: days since 1970-01-01 in the proleptic Gregorian calendar.
 * No time zones, no clock.
 */
export type CivilDate = { year: number; month: number; day: number };

/** Day number of a civil date (month 1…12). Source: Howard Hinnant, chrono-compatible date algorithms, 2021. */
export function dayNumber(year: number, month: number, day: number): DayNumber {
  const y = month <= 2 ? year - 1 : year;
  const era = Math.floor(y / 400);
  const yearOfEra = y - era * 400;
  const dayOfShiftedYear = Math.floor((153 * (month + (month > 2 ? -3 : 9)) + 2) / 5) + day - 1;
  const dayOfEra =
    yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfShiftedYear;
  return era * 146097 + dayOfEra - 719468;
}

/** Civil date of a day number; the inverse of {@link dayNumber}. */
export function civilDate(day: DayNumber): CivilDate {
  const z = day + 719468;
  const era = Math.floor(z / 146097);
  const dayOfEra = z - era * 146097;
  const yearOfEra = Math.floor(
    (dayOfEra - Math.floor(dayOfEra / 1460) + Math.floor(dayOfEra / 36524) - Math.floor(dayOfEra / 146096)) /
      365,
  );
  const dayOfShiftedYear =
    dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const shiftedMonth = Math.floor((5 * dayOfShiftedYear + 2) / 153);
  const month = shiftedMonth < 10 ? shiftedMonth + 3 : shiftedMonth - 9;
  return {
    year: yearOfEra + era * 400 + (month <= 2 ? 1 : 0),
    month,
    day: dayOfShiftedYear - Math.floor((153 * shiftedMonth + 2) / 5) + 1,
  };
}

/** Whether a year of the Gregorian calendar has a 29 February. */
export function isLeapYear(year: number): boolean {
  return (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
}

/** 365 or 366, by the Gregorian calendar. */
export function daysInYear(year: number): number {
  return isLeapYear(year) ? 366 : 365;
}

/** 1 on 1 January. */
export function dayOfYear(day: DayNumber): DayOfYear {
  return day - dayNumber(civilDate(day).year, 1, 1) + 1;
}

/** ISO 8601 date, `YYYY-MM-DD`. */
export function formatDay(day: DayNumber): string {
  const { year, month, day: dayOfMonth } = civilDate(day);
  return `${String(year).padStart(4, '0')}-${String(month).padStart(2, '0')}-${String(dayOfMonth).padStart(2, '0')}`;
}

/** Day number of an ISO date; null for another form or a day that does not exist (30 February). */
export function parseDay(text: string): DayNumber | null {
  const match = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
  if (!match) return null;
  const day = dayNumber(Number(match[1]), Number(match[2]), Number(match[3]));
  return Number(match[2]) >= 1 && formatDay(day) === text ? day : null;
}
