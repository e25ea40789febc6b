import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { effectiveNumber, resampled, tempered, weightsOf } from '../../src/learn/weights.ts';
import { randomSource } from '../../src/math/index.ts';

const someWeights = fc
  .array(fc.double({ min: 1e-9, max: 1, noNaN: true }), { minLength: 1, maxLength: 200, size: 'max' })
  .map((weights) => Float64Array.from(weights));

describe('weights', () => {
  // Kish 1965: equal weights are worth their number, one among nothings is worth one
  test('are worth as many equal ones as Kish has it', () => {
    expect(effectiveNumber([1, 1, 1, 1])).toBe(4);
    expect(effectiveNumber([1, 0, 0, 0])).toBe(1);
    expect(effectiveNumber([2, 1, 1])).toBeCloseTo(16 / 6, 12);
  });

  test('are made of logarithms that no exponential could hold', () => {
    expect([...weightsOf([-1e5, -1e5 - Math.LN2])]).toEqual([1, expect.closeTo(0.5, 9)]);
  });

  test('tempered, keep their order and are worth what was asked, or all they can be', () => {
    fc.assert(
      fc.property(someWeights, fc.double({ min: 1, max: 100, noNaN: true }), (weights, least) => {
        const soft = tempered(weights, least);
        expect(effectiveNumber(soft)).toBeGreaterThan(Math.min(least, weights.length) * 0.999);
        const order = (of: Float64Array) => [...of.keys()].sort((a, b) => of[a] - of[b] || a - b);
        if (effectiveNumber(weights) < least && soft.every((weight) => weight < 1 || weight === 1))
          expect(soft[order(weights).at(-1) as number]).toBe(Math.max(...soft));
      }),
      { seed: 4, numRuns: 200 },
    );
  });

  test('resampled, come as often as they weigh, to within one', () => {
    fc.assert(
      fc.property(someWeights, fc.integer({ min: 1, max: 400 }), (weights, count) => {
        const places = resampled(weights, count, randomSource(5));
        const total = weights.reduce((a, b) => a + b, 0);
        expect(places).toHaveLength(count);
        weights.forEach((weight, at) => {
          const times = places.filter((place) => place === at).length;
          expect(Math.abs(times - (count * weight) / total)).toBeLessThan(1 + 1e-6);
        });
      }),
      { seed: 6, numRuns: 200 },
    );
  });
});
