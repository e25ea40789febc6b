import fc from 'fast-check';
import * as statistics from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { mean, quantileSorted, standardDeviation } from '../../src/math/index.ts';

const sample = fc.array(fc.double({ min: -1e3, max: 1e3, noNaN: true }), { minLength: 2, maxLength: 40 });
const near = (actual: number, expected: number) => Math.abs(actual - expected) <= 1e-8;

describe('sample figures', () => {
  it('mean and standard deviation are those of simple-statistics', () => {
    fc.assert(
      fc.property(
        sample,
        (values) =>
          near(mean(values), statistics.mean(values)) &&
          near(standardDeviation(values), statistics.sampleStandardDeviation(values)),
      ),
      { seed: 1 },
    );
  });

  // Hyndman & Fan 1996, type 7; answers by hand: position (n − 1)·share between order statistics.
  it.each([
    [[1, 2, 3, 4], 0.25, 1.75],
    [[1, 2, 3, 4], 0.5, 2.5],
    [[10, 20, 40], 0.1, 12],
    [[10, 20, 40], 0.9, 36],
    [[5], 0.9, 5],
    [[1, 9], 0, 1],
    [[1, 9], 1, 9],
  ])('quantile of %j at %d is %d', (values, share, expected) => {
    expect(quantileSorted(values, share)).toBeCloseTo(expected, 12);
  });

  it('median is that of simple-statistics', () => {
    fc.assert(
      fc.property(sample, (values) => {
        const ascending = [...values].sort((a, b) => a - b);
        return near(quantileSorted(ascending, 0.5), statistics.medianSorted(ascending));
      }),
      { seed: 2 },
    );
  });

  it('quantiles rise with the share and stay within the sample', () => {
    const shares = fc.tuple(
      fc.double({ min: 0, max: 1, noNaN: true }),
      fc.double({ min: 0, max: 1, noNaN: true }),
    );
    fc.assert(
      fc.property(sample, shares, (values, [a, b]) => {
        const ascending = Float64Array.from(values).sort();
        const low = quantileSorted(ascending, Math.min(a, b));
        const high = quantileSorted(ascending, Math.max(a, b));
        const slack = 1e-9;
        return (
          low <= high + slack &&
          low >= ascending[0] - slack &&
          high <= ascending[ascending.length - 1] + slack
        );
      }),
      { seed: 3 },
    );
  });

  it('is NaN where a sample is too small', () => {
    expect(mean([])).toBeNaN();
    expect(quantileSorted([], 0.5)).toBeNaN();
    expect(standardDeviation([1])).toBeNaN();
  });
});
