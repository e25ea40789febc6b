import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { coldColumn, degreesAbove, degreesColumn, rampColumn } from '../../src/plant/index.ts';

const one = (x: number) => Float64Array.of(x);
/** Mean of a response over a sine day, by a thousand steps. */
const bySteps = (low: number, high: number, f: (temp: number) => number) => {
  let sum = 0;
  for (let i = 0; i < 1000; i++)
    sum += f((low + high) / 2 + ((high - low) / 2) * Math.sin((2 * Math.PI * (i + 0.5)) / 1000));
  return sum / 1000;
};
const day = fc.tuple(
  fc.double({ min: -10, max: 35, noNaN: true }),
  fc.double({ min: 0, max: 20, noNaN: true }),
);

describe('a response over a day that swings as a sine', () => {
  test('is that of its mean where it is straight', () => {
    expect(degreesColumn(one(10), one(18), 5, 30)[0]).toBeCloseTo(9, 12);
    expect(rampColumn(one(10), one(15), 5, 20)[0]).toBeCloseTo(0.5, 12);
  });

  test('is that of the day where it does not swing', () => {
    expect(degreesColumn(one(25), one(25), 5, 20)[0]).toBe(15);
    expect(degreesColumn(one(4), one(4), 5, 20)[0]).toBe(0);
    expect(coldColumn(one(9), one(9), 17)[0]).toBe(1);
    expect(coldColumn(one(13), one(13), 17)[0]).toBeCloseTo(0.5, 12);
    expect(coldColumn(one(4.5), one(4.5), 17)[0]).toBeCloseTo(0.5, 12);
  });

  test('counts the warm hours of a day whose mean lies below the base', () => {
    expect(degreesColumn(one(0), one(9), 5, 20)[0]).toBeGreaterThan(0.3);
  });

  test('is within a tenth of the swing of what a thousand steps give', () => {
    fc.assert(
      fc.property(day, ([low, swing]) => {
        const found = degreesColumn(one(low), one(low + swing), 5, 20)[0];
        const exact = bySteps(low, low + swing, (temp) => degreesAbove(temp, 5, 20));
        expect(Math.abs(found - exact)).toBeLessThanOrEqual(0.1 * swing + 1e-9);
      }),
      { seed: 20261128 },
    );
  });
});
