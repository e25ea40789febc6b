import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { climateDayOf, dayNumber } from '../../src/calendar/index.ts';
import { longestSeason, seasonEnd } from '../../src/season/season-end.ts';

/** Days that a crop started on that date has. */
const daysFrom = (month: number, day: number, latitudeDeg: number) =>
  seasonEnd(climateDayOf(dayNumber(2027, month, day)), latitudeDeg);

describe('a season', () => {
  // 21 June and 21 December are days 171 and 354 of a year from 0 on.
  test('from lengthening days ends at the next shortest day', () => {
    expect(daysFrom(3, 1, 50)).toBe(354 - 59);
    expect(daysFrom(9, 1, -35)).toBe(365 - 243 + 171);
    expect(daysFrom(12, 22, 50)).toBe(364);
  });

  test('from shortening days winters once and ends a month before the shortest day of the year after', () => {
    expect(daysFrom(9, 1, 50)).toBe(354 - 243 + 365 - 30);
    expect(daysFrom(3, 1, -35)).toBe(171 - 59 + 365 - 30);
  });

  test('turns on the longest day', () => {
    expect(daysFrom(6, 20, 50)).toBe(184);
    expect(daysFrom(6, 21, 50)).toBe(183 + 335);
  });

  test('is never longer than said', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 364 }), fc.constantFrom(-40, 0, 40), (day, latitudeDeg) => {
        const days = seasonEnd(day, latitudeDeg);
        expect(days).toBeGreaterThan(180);
        expect(days).toBeLessThanOrEqual(longestSeason);
      }),
      { seed: 20261128 },
    );
  });
});
