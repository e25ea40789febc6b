import { dateFormat } from './formats.ts';
import type { Locale } from './messages.ts';
import type { Say } from './speaker.ts';

/** Days since 1970-01-01, and days of a 365-day year (1 = 1 January), as the compiler tells them apart in the engine. */
type DayNumber = number & { readonly kind?: 'day number' };
type CommonYearDay = number & { readonly kind?: 'day of a common year' };

/** Dates for people from day numbers (days since 1970-01-01), as the locale has them. */
export type DateWords = {
  /** 12 August */
  day(dayNumber: DayNumber): string;
  /** 12 August 2027 */
  dayWithYear(dayNumber: DayNumber): string;
  /** 1–25 August */
  dayRange(from: DayNumber, to: DayNumber): string;
  /** 12 August, from the day of a 365-day year (1 = 1 January). */
  dayOfYear(dayOfYear: CommonYearDay): string;
  dayOfYearRange(from: CommonYearDay, to: CommonYearDay): string;
  /** Jan */
  month(month: number): string;
  /** Jan 2027 */
  monthWithYear(year: number, month: number): string;
};

const msPerDay = 86_400_000;
/** 1 January 2027, a year of 365 days. */
const commonYearStart = 20_819;

const dayAndMonth = { day: 'numeric', month: 'long', timeZone: 'UTC' } as const;
const withYear = { ...dayAndMonth, year: 'numeric' } as const;
const monthAlone = { month: 'short', timeZone: 'UTC' } as const;
const monthAndYear = { ...monthAlone, year: 'numeric' } as const;

export function dateWords(locale: Locale, say: Say): DateWords {
  const msOf = (dayNumber: DayNumber) => Math.round(dayNumber) * msPerDay;
  const yearOf = (dayNumber: DayNumber) => new Date(msOf(dayNumber)).getUTCFullYear();
  const fromDayOfYear = (dayOfYear: CommonYearDay): DayNumber => commonYearStart + Math.round(dayOfYear) - 1;
  const day = (dayNumber: DayNumber) => dateFormat(locale, dayAndMonth).format(msOf(dayNumber));

  function dayRange(from: DayNumber, to: DayNumber): string {
    // neither end is told with its year, so that a range over New Year reads like any other
    if (yearOf(from) !== yearOf(to) || from > to) {
      return say('date.range-over-new-year', { from: day(from), to: day(to) });
    }
    return dateFormat(locale, dayAndMonth).formatRange(msOf(from), msOf(to));
  }

  return {
    day,
    dayWithYear: (dayNumber) => dateFormat(locale, withYear).format(msOf(dayNumber)),
    dayRange,
    dayOfYear: (dayOfYear) => day(fromDayOfYear(dayOfYear)),
    dayOfYearRange: (from, to) => dayRange(fromDayOfYear(from), fromDayOfYear(to)),
    month: (month) => dateFormat(locale, monthAlone).format(Date.UTC(2027, month - 1, 15)),
    monthWithYear: (year, month) => dateFormat(locale, monthAndYear).format(Date.UTC(year, month - 1, 15)),
  };
}
