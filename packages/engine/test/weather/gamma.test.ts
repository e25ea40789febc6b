import { describe, expect, it } from 'vitest';
import { mean, randomSource, standardDeviation } from '../../src/math/index.ts';
import { standardGamma } from '../../src/weather/gamma.ts';

describe('gamma deviates of scale 1', () => {
  // Mean and variance of a gamma distribution of scale 1 are both its shape.
  it.each([0.3, 0.45, 0.8, 1, 2.5])('have mean and variance equal to the shape, %d', (shape) => {
    const random = randomSource(3);
    const values = Float64Array.from({ length: 200_000 }, () => standardGamma(shape, random));
    expect(mean(values) / shape).toBeCloseTo(1, 1.7);
    expect(standardDeviation(values) ** 2 / shape).toBeCloseTo(1, 1.2);
    expect(values.every((value) => value >= 0)).toBe(true);
  });

  it('follow the exponential distribution at shape 1', () => {
    const random = randomSource(4);
    const values = Float64Array.from({ length: 100_000 }, () => standardGamma(1, random));
    for (const limit of [0.1, 0.7, 2, 4]) {
      const share = values.filter((value) => value > limit).length / values.length;
      expect(Math.abs(share - Math.exp(-limit))).toBeLessThan(0.005);
    }
  });
});
