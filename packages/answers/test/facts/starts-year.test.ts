import {
  civilDate,
  dayNumber,
  type SeasonSummary,
  type StartWindow,
  type WhenAnswer,
  weekStarts,
} from '@neckfall/engine';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isInStartsYear, startsYearDays, startsYearFirst } from '../../src/index.ts';

/** An invented year: weeks of one run are good. */
function yearWith(windows: StartWindow[]): WhenAnswer {
  const isGood = (day: number) =>
    windows.some(({ from, to }) => (from <= to ? day >= from && day <= to : day >= from || day <= to));
  return {
    starts: weekStarts.map((dayOfYear) => ({
      dayOfYear,
      hindrance: null,
      summary: {
        seasonShares: { good: isGood(dayOfYear) ? 0.9 : 0 },
        onset: { share: 1 },
      } as unknown as SeasonSummary,
    })),
    windows,
    best: windows[0]?.best ?? 99,
    reason: { code: 'window', values: {} as WhenAnswer['reason']['values'] },
  };
}

const springWindow = { from: 78, to: 141, best: 99 };
const winterWindow = { from: 260, to: 50, best: 337 };
const days = fc.integer({ min: dayNumber(2025, 1, 1), max: dayNumber(2031, 12, 31) });

describe('the year of starts shown', () => {
  test('begins with a month, one to four months before the day', () => {
    fc.assert(
      fc.property(days, fc.constantFrom(springWindow, winterWindow), (day, window) => {
        const first = startsYearFirst(yearWith([window]), day);
        expect(civilDate(first).day).toBe(1);
        expect(isInStartsYear(first, day)).toBe(true);
        expect(day - first).toBeGreaterThanOrEqual(28);
        expect(day - first).toBeLessThanOrEqual(153);
      }),
      { seed: 3 },
    );
  });

  test('cuts no window in two where it need not', () => {
    // two months before 1 June the window is open; four months before it is not
    const first = startsYearFirst(yearWith([springWindow]), dayNumber(2027, 6, 1));
    expect(civilDate(first).month).toBe(3);
    expect(startsYearDays).toBe(365);
  });
});
