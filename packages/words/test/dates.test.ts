import { describe, expect, test } from 'vitest';
import { speaker } from '../src/index.ts';

/** 1 January 2027: 57 years and 14 leap days after 1970. */
const newYear = 57 * 365 + 14;
/** Of 2027 and of 2028, a leap year. */
const lengths = [
  31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31, 31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31,
];
const months = 'January February March April May June July August September October November December'.split(
  ' ',
);

describe('dates', () => {
  test('are those of the calendar, with and without a year', () => {
    const { day, dayWithYear } = speaker('metric');
    let at = newYear;
    lengths.forEach((length, month) => {
      for (let date = 1; date <= length; date++, at++) {
        const known = `${date} ${months[month % 12]}`;
        expect(day(at)).toBe(known);
        expect(dayWithYear(at)).toBe(`${known} ${month < 12 ? 2027 : 2028}`);
      }
    });
  });

  test('in a range inside a year name what both ends share once', () => {
    // spaces round the dash differ between versions of the locale's data
    const spaced = (text: string) => text.replace(/\s/g, '');
    expect(spaced(speaker('metric').dayRange(newYear, newYear + 24))).toBe('1–25January');
    expect(spaced(speaker('us').dayRange(newYear, newYear + 24))).toBe('January1–25');
    expect(spaced(speaker('metric').dayRange(newYear + 20, newYear + 40))).toBe('21January–10February');
  });

  test('in a range over New Year, or that ends before it begins, tell no year', () => {
    const { dayRange } = speaker('metric');
    expect(dayRange(newYear + 350, newYear + 380)).toBe('17 December – 16 January');
    expect(dayRange(newYear + 20, newYear + 10)).toBe('21 January – 11 January');
    expect(dayRange(newYear + 10, newYear + 375)).toBe('11 January – 11 January');
  });
});
