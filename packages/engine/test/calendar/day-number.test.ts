import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  civilDate,
  dayNumber,
  dayOfYear,
  daysInYear,
  formatDay,
  isLeapYear,
  parseDay,
} from '../../src/calendar/index.ts';

const msPerDay = 86_400_000;
/** Whole days that JavaScript's own calendar covers with four-digit years. */
const anyDay = fc.integer({ min: -719_528, max: 2_932_896 });
const utc = (day: number) => new Date(day * msPerDay);

describe('day numbers agree with the calendar of JavaScript (UTC)', () => {
  it('for dates from year 0 to 9999', () => {
    fc.assert(
      fc.property(anyDay, (day) => {
        const date = utc(day);
        const parts = { year: date.getUTCFullYear(), month: date.getUTCMonth() + 1, day: date.getUTCDate() };
        expect(civilDate(day)).toEqual(parts);
        expect(dayNumber(parts.year, parts.month, parts.day)).toBe(day);
        expect(formatDay(day)).toBe(date.toISOString().slice(0, 10));
        expect(parseDay(formatDay(day))).toBe(day);
      }),
      { seed: 19_700_101, numRuns: 3000 },
    );
  });

  it('every day of 1896–1905, 1996–2005 and 2096–2105, across both kinds of century', () => {
    for (const first of [1896, 1996, 2096]) {
      for (let day = dayNumber(first, 1, 1); day < dayNumber(first + 10, 1, 1); day++) {
        expect(formatDay(day)).toBe(utc(day).toISOString().slice(0, 10));
      }
    }
  });

  it('for days of the year and lengths of years', () => {
    fc.assert(
      fc.property(anyDay, (day) => {
        const year = utc(day).getUTCFullYear();
        const newYear = new Date(0).setUTCFullYear(year, 0, 1) / msPerDay;
        const nextYear = new Date(0).setUTCFullYear(year + 1, 0, 1) / msPerDay;
        expect(dayOfYear(day)).toBe(day - newYear + 1);
        expect(daysInYear(year)).toBe(nextYear - newYear);
        expect(isLeapYear(year)).toBe(nextYear - newYear === 366);
      }),
      { seed: 19_700_102, numRuns: 1000 },
    );
  });

  it('for every month and day number a text can name, real or not', () => {
    for (let month = 0; month <= 13; month++) {
      for (let day = 0; day <= 32; day++) {
        for (const year of [1900, 2000, 2027, 2028]) {
          const text = `${year}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`;
          const date = new Date(Date.UTC(year, month - 1, day));
          const isReal = date.getUTCMonth() === month - 1 && date.getUTCDate() === day;
          expect(parseDay(text), text).toBe(isReal ? date.getTime() / msPerDay : null);
        }
      }
    }
  });
});

describe('a date in another form', () => {
  it.each([
    '',
    '2027',
    '2027-3-01',
    '01/03/2027',
    '2027-03-01T00:00',
    ' 2027-03-01',
    '+2027-03-01',
    '２０２７-03-01',
  ])('is refused: %j', (text) => {
    expect(parseDay(text)).toBeNull();
  });
});
