import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { normalCdf } from '../../src/math/index.ts';
import { drawsOf } from '../../src/season/index.ts';

const strata = (values: readonly number[], count: number) =>
  new Set(values.map((value) => Math.min(count - 1, Math.floor(count * value))));

/** Shares of the normal distribution at which the day-length draws lie. */
function sharesOf(years: number, seed: number): number[] {
  const shifts = drawsOf(years, seed).map(({ criticalShiftH }) => criticalShiftH);
  const spread = Math.sqrt(shifts.reduce((a, x) => a + x * x, 0) / shifts.length);
  // the outermost draws tell the scale: their share is known
  const most = Math.max(...shifts);
  const z = (x: number) => (x / most) * outermost(years);
  expect(spread).toBeGreaterThan(0);
  return shifts.map((x) => normalCdf(z(x)));
}

/** z of the middle of the last of so many equal shares, by halving. */
function outermost(years: number): number {
  let low = 0;
  let high = 6;
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (normalCdf(middle) < 1 - 0.5 / years) low = middle;
    else high = middle;
  }
  return low;
}

describe('draws of a kind', () => {
  test('meet every equal share of the distribution once, and every third of the years does so too', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 12 }), fc.integer({ min: 0, max: 1000 }), (third, seed) => {
        const years = 3 * third;
        const shares = sharesOf(years, seed);
        expect(strata(shares, years).size).toBe(years);
        for (let slice = 0; slice < 3; slice++)
          expect(strata(shares.slice(slice * third, (slice + 1) * third), third).size).toBe(third);
      }),
      { seed: 20261128, numRuns: 60 },
    );
  });

  test("don't shift the middle", () => {
    const draws = drawsOf(30, 1);
    const median = (of: (draw: (typeof draws)[number]) => number) => {
      const sorted = draws.map(of).sort((a, b) => a - b);
      return (sorted[14] + sorted[15]) / 2;
    };
    expect(median(({ criticalShiftH }) => criticalShiftH)).toBeCloseTo(0, 9);
    expect(median(({ ripeningFactor }) => ripeningFactor)).toBeCloseTo(1, 9);
    expect(median(({ phyllochronFactor }) => phyllochronFactor)).toBeCloseTo(1, 9);
  });

  test('are as wide as told, and no kind is quicker than seven tenths of the usual (ours)', () => {
    const factors = (spread: number) =>
      drawsOf(30, 1, { criticalH: spread, ripening: spread, phyllochron: spread });
    const wide = factors(1);
    expect(Math.max(...wide.map(({ ripeningFactor }) => ripeningFactor))).toBeCloseTo(1 + outermost(30), 5);
    expect(Math.max(...wide.map(({ phyllochronFactor }) => phyllochronFactor))).toBeCloseTo(
      1 + outermost(30),
      5,
    );
    expect(Math.min(...wide.map(({ ripeningFactor }) => ripeningFactor))).toBe(0.7);
    expect(Math.min(...wide.map(({ phyllochronFactor }) => phyllochronFactor))).toBe(0.7);
    expect(Math.max(...factors(0.5).map(({ criticalShiftH }) => criticalShiftH))).toBeCloseTo(
      0.5 * outermost(30),
      5,
    );
  });

  test('are the same for the same seed and others for another', () => {
    expect(drawsOf(9, 4)).toEqual(drawsOf(9, 4));
    expect(drawsOf(9, 5)).not.toEqual(drawsOf(9, 4));
  });
});
