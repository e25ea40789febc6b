import { errorFunction } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { normalCdf, normalQuantile } from '../../src/math/index.ts';

describe('normal distribution', () => {
  // 2.5758293, 1.959964, 1.6448536: NIST/SEMATECH e-Handbook, critical values of the normal distribution (memory).
  it.each([
    [0.995, 2.5758293035489],
    [0.975, 1.9599639845401],
    [0.95, 1.6448536269515],
    [0.5, 0],
  ])('has the tabulated quantile of %d', (share, z) => {
    expect(normalQuantile(share)).toBeCloseTo(z, 7);
    expect(normalQuantile(1 - share)).toBeCloseTo(-z, 7);
    expect(Math.abs(normalCdf(z) - share)).toBeLessThan(7.5e-8);
  });

  // Errors allowed: 7.5e-8 of ours and 1.2e-7 / 2 of the library's error function.
  const cdfBySimpleStatistics = (z: number) => (1 + errorFunction(z / Math.SQRT2)) / 2;

  it('agrees with the error function of simple-statistics', () => {
    for (let i = -600; i <= 600; i++) {
      const z = i / 100;
      expect(Math.abs(normalCdf(z) - cdfBySimpleStatistics(z)), `z ${z}`).toBeLessThan(1.4e-7);
    }
  });

  it('has quantiles that the error function of simple-statistics takes back to the share', () => {
    for (let i = 1; i < 1000; i++) {
      const share = i / 1000;
      expect(Math.abs(cdfBySimpleStatistics(normalQuantile(share)) - share), `${share}`).toBeLessThan(7e-8);
    }
  });

  it('comes back from quantile to share, into the tails', () => {
    for (let exponent = -7; exponent <= -1; exponent++) {
      for (const share of [10 ** exponent, 3 * 10 ** exponent, 1 - 10 ** exponent]) {
        expect(Math.abs(normalCdf(normalQuantile(share)) - share), `share ${share}`).toBeLessThan(7.5e-8);
      }
    }
  });

  it('joins its pieces without a step', () => {
    const edge = 0.02425;
    expect(normalQuantile(edge + 1e-12)).toBeCloseTo(normalQuantile(edge - 1e-12), 7);
    expect(normalQuantile(1 - edge + 1e-12)).toBeCloseTo(normalQuantile(1 - edge - 1e-12), 7);
  });

  it('has no end', () => {
    expect(normalQuantile(0)).toBe(Number.NEGATIVE_INFINITY);
    expect(normalQuantile(1)).toBe(Number.POSITIVE_INFINITY);
    expect(normalCdf(Number.NEGATIVE_INFINITY)).toBe(0);
    expect(normalCdf(Number.POSITIVE_INFINITY)).toBe(1);
  });
});
