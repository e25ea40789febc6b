import type { Say } from './speaker.ts';

/** Days since 1970-01-01, and days of a 365-day year (1 = 1 January), as the compiler tells them apart in the engine. */
type DayNumber = number & { readonly kind?: 'day number' };
type CommonYearDay = number & { readonly kind?: 'day of a common year' };

/** Dates for people from day numbers (days since 1970-01-01), by the locale's own patterns. */
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
};

const msPerDay = 86_400_000;
/** 1 January 2027, a year of 365 days. */
const commonYearStart = 20_819;

/** In words of our own: the first date that a browser formats takes a phone some 50 ms, and versions differ in them. */
export function dateWords(say: Say): DateWords {
  const fromDayOfYear = (dayOfYear: CommonYearDay): DayNumber => commonYearStart + Math.round(dayOfYear) - 1;
  const monthName = (month: number) => say(`month.${month}` as 'month.1');

  function day(dayNumber: DayNumber): string {
    const { day, month } = calendarDay(dayNumber);
    return say('date.day', { day, month: monthName(month) });
  }

  function dayWithYear(dayNumber: DayNumber): string {
    const { day, month, year } = calendarDay(dayNumber);
    return say('date.day-with-year', { day, month: monthName(month), year });
  }

  function dayRange(fromDay: DayNumber, toDay: DayNumber): string {
    const from = calendarDay(fromDay);
    const to = calendarDay(toDay);
    const ends = { from: day(fromDay), to: day(toDay) };
    if (ends.from === ends.to && from.year === to.year) return ends.from;
    // neither end is told with its year, so that a range over New Year reads like any other
    if (from.year !== to.year || fromDay > toDay) return say('date.range-over-new-year', ends);
    if (from.month !== to.month) return say('date.range', ends);
    return say('date.range-in-month', { from: from.day, to: to.day, month: monthName(from.month) });
  }

  return {
    day,
    dayWithYear,
    dayRange,
    dayOfYear: (dayOfYear) => day(fromDayOfYear(dayOfYear)),
    dayOfYearRange: (from, to) => dayRange(fromDayOfYear(from), fromDayOfYear(to)),
    month: (month) => say(`month-short.${month}` as 'month-short.1'),
  };
}

function calendarDay(dayNumber: DayNumber): { day: number; month: number; year: number } {
  const date = new Date(Math.round(dayNumber) * msPerDay);
  return { day: date.getUTCDate(), month: date.getUTCMonth() + 1, year: date.getUTCFullYear() };
}
