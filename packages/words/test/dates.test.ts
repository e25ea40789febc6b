import { describe, expect, test } from 'vitest';
import { speaker } from '../src/index.ts';

const msPerDay = 86_400_000;
/** 1 January 2027 to 31 December 2028, a leap year among them. */
const days = Array.from({ length: 731 }, (_, at) => 20_819 + at);

// source: Unicode CLDR, as the Intl formats of this machine have it
describe.each([
  ['en-GB', 'metric'],
  ['en-US', 'us'],
] as const)('dates in %s are those of the locale', (locale, units) => {
  const { day, dayWithYear, dayRange, month } = speaker(units);
  const long = { day: 'numeric', month: 'long', timeZone: 'UTC' } as const;
  const dayMonth = new Intl.DateTimeFormat(locale, long);
  const withYear = new Intl.DateTimeFormat(locale, { ...long, year: 'numeric' });
  const short = new Intl.DateTimeFormat(locale, { month: 'short', timeZone: 'UTC' });

  test('days, with and without a year', () => {
    for (const at of days) {
      expect(day(at)).toBe(dayMonth.format(at * msPerDay));
      expect(dayWithYear(at)).toBe(withYear.format(at * msPerDay));
    }
  });

  test('months cut short', () => {
    for (let at = 0; at < 12; at++) expect(month(at + 1)).toBe(short.format(Date.UTC(2027, at, 15)));
  });

  test('ranges inside a year', () => {
    // spaces round the dash differ between versions of the locale's data
    const spaced = (text: string) => text.replace(/\s/g, ' ');
    for (const from of [0, 30, 58, 200, 334]) {
      for (const length of [1, 9, 27, 30]) {
        const [first, last] = [days[from], days[from + length]];
        const known = dayMonth.formatRange(first * msPerDay, last * msPerDay);
        expect(spaced(dayRange(first, last))).toBe(spaced(known));
      }
    }
  });
});

test('a range over New Year, or that ends before it begins, tells no year', () => {
  const { dayRange } = speaker('metric');
  expect(dayRange(days[350], days[380])).toBe('17 December – 16 January');
  expect(dayRange(days[20], days[10])).toBe('21 January – 11 January');
  expect(dayRange(days[10], days[375])).toBe('11 January – 11 January');
});
