import type { Locale } from './speaker.ts';

/** Dates for people from day numbers (days since 1970-01-01), by the locale's own rules. */
export type DateWords = {
  /** 12 August */
  day(dayNumber: number): string;
  /** 12 August 2027 */
  dayWithYear(dayNumber: number): string;
  /** 1–25 August */
  dayRange(from: number, to: number): string;
  /** 12 August, from the day of a 365-day year (1 = 1 January). */
  dayOfYear(dayOfYear: number): string;
  dayOfYearRange(from: number, to: number): string;
  /** Jan */
  month(month: number): string;
};

const msPerDay = 86_400_000;
/** 1 January 2027, a year of 365 days. */
const commonYearStart = 20_819;

export function dateWords(locale: Locale): DateWords {
  const options = { day: 'numeric', month: 'long', timeZone: 'UTC' } as const;
  const dayMonth = new Intl.DateTimeFormat(locale, options);
  const withYear = new Intl.DateTimeFormat(locale, { ...options, year: 'numeric' });
  const monthName = new Intl.DateTimeFormat(locale, { month: 'short', timeZone: 'UTC' });
  const instant = (day: number) => Math.round(day) * msPerDay;
  const fromDayOfYear = (dayOfYear: number) => commonYearStart + Math.round(dayOfYear) - 1;

  function dayRange(from: number, to: number): string {
    if (Math.round(from) === Math.round(to)) return dayMonth.format(instant(from));
    // a range over New Year would print both years: say its ends without them
    const sameYear = new Date(instant(from)).getUTCFullYear() === new Date(instant(to)).getUTCFullYear();
    if (sameYear && from < to) return dayMonth.formatRange(instant(from), instant(to));
    return `${dayMonth.format(instant(from))} – ${dayMonth.format(instant(to))}`;
  }

  return {
    day: (day) => dayMonth.format(instant(day)),
    dayWithYear: (day) => withYear.format(instant(day)),
    dayRange,
    dayOfYear: (day) => dayMonth.format(instant(fromDayOfYear(day))),
    dayOfYearRange: (from, to) => dayRange(fromDayOfYear(from), fromDayOfYear(to)),
    month: (month) => monthName.format(instant(commonYearStart + (month - 1) * 31)),
  };
}
