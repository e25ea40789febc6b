import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bestStretch, middleOf } from '../../src/choice/best-stretch.ts';

const weeks = 52;
/** A year in which the weeks of a stretch are good and no others; `first` may be before the year's beginning. */
const yearWith = (first: number, length: number) => (week: number) =>
  (week - first + 2 * weeks) % weeks < length ? 1 : 0;

const starts = fc.integer({ min: 0, max: weeks - 1 });
const lengths = fc.integer({ min: 1, max: 20 });

describe('a stretch of weeks as good as the best', () => {
  test('is found whole from any week inside it, and its middle is its middle', () => {
    fc.assert(
      fc.property(starts, lengths, fc.nat(), (first, length, inside) => {
        // a stretch reaches a quarter of the year either way
        const best = (first + Math.min(inside % length, 12)) % weeks;
        fc.pre(length - (inside % length) <= 13);
        const middle = middleOf(bestStretch(best, weeks, yearWith(first, length)), weeks);
        const expected = first + (length - 1) / 2;
        const off = (((middle - expected) % weeks) + weeks) % weeks;
        expect(Math.min(off, weeks - off)).toBeLessThanOrEqual(0.5);
      }),
      { seed: 20270503 },
    );
  });

  test('is not ended by one week that falls short', () => {
    const worthAt = (week: number) => (week === 12 ? 0 : yearWith(10, 9)(week));
    expect(bestStretch(15, weeks, worthAt)).toEqual({ first: 10, last: 18 });
  });

  test('that is the whole year leaves the best alone', () => {
    expect(bestStretch(20, weeks, () => 1)).toEqual({ first: 20, last: 20 });
  });
});

test('dates are as good as the best that are worth up to 0.04 less, a little more than one season in thirty', () => {
  const fallsBy = (less: number) =>
    bestStretch(20, 52, (week) => (Math.abs(week - 20) <= 2 ? 1 - (week === 20 ? 0 : less) : 0));
  expect(fallsBy(0.039)).toEqual({ first: 18, last: 22 });
  expect(fallsBy(0.041)).toEqual({ first: 20, last: 20 });
});
