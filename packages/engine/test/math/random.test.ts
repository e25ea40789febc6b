import { describe, expect, it } from 'vitest';
import { mean, randomSource, standardDeviation } from '../../src/math/index.ts';

const draws = (count: number, draw: () => number) => Float64Array.from({ length: count }, draw);

/** Fisher's g₁ and excess kurtosis g₂: 0 for a normal sample, standard errors √(6/n) and √(24/n). */
function shape(values: Float64Array): { skewness: number; kurtosis: number } {
  const centre = mean(values);
  const sd = standardDeviation(values);
  const moment = (power: number) => mean(values.map((value) => ((value - centre) / sd) ** power));
  return { skewness: moment(3), kurtosis: moment(4) - 3 };
}

describe('random source', () => {
  const n = 200_000;

  it('gives the same sequence for the same seed', () => {
    const [first, second] = [randomSource(7), randomSource(7)];
    expect(draws(50, first.normal)).toEqual(draws(50, second.normal));
    expect(draws(50, first.uniform)).toEqual(draws(50, second.uniform));
  });

  it('draws uniforms in the open interval with the moments of the uniform distribution', () => {
    const values = draws(n, randomSource(1).uniform);
    expect(Math.min(...values.subarray(0, 50_000))).toBeGreaterThan(0);
    expect(Math.max(...values.subarray(0, 50_000))).toBeLessThan(1);
    // Within four standard errors.
    expect(Math.abs(mean(values) - 0.5)).toBeLessThan(4 / Math.sqrt(12 * n));
    expect(Math.abs(standardDeviation(values) ** 2 - 1 / 12)).toBeLessThan(4 * Math.sqrt(1 / 180 / n));
  });

  it('draws normals with the moments of the standard normal distribution', () => {
    const values = draws(n, randomSource(2).normal);
    const { skewness, kurtosis } = shape(values);
    expect(Math.abs(mean(values))).toBeLessThan(4 / Math.sqrt(n));
    expect(Math.abs(standardDeviation(values) - 1)).toBeLessThan(4 / Math.sqrt(2 * n));
    expect(Math.abs(skewness)).toBeLessThan(4 * Math.sqrt(6 / n));
    expect(Math.abs(kurtosis)).toBeLessThan(4 * Math.sqrt(24 / n));
  });

  it('draws numbers that do not follow from the one before', () => {
    const values = draws(n, randomSource(3).normal);
    const products = values.subarray(1).map((value, i) => value * values[i]);
    expect(Math.abs(mean(products))).toBeLessThan(4 / Math.sqrt(n));
  });

  it.each([0, 1, 2, 3])('draw %i of neighbouring seeds is unrelated and evenly spread', (position) => {
    const seeds = 20_000;
    const values = Float64Array.from(
      { length: seeds },
      (_, seed) => draws(4, randomSource(seed).uniform)[position],
    );
    expect(Math.abs(mean(values) - 0.5)).toBeLessThan(4 / Math.sqrt(12 * seeds));
    expect(Math.abs(standardDeviation(values) ** 2 - 1 / 12)).toBeLessThan(4 * Math.sqrt(1 / 180 / seeds));
    const products = values.subarray(1).map((value, i) => 12 * (value - 0.5) * (values[i] - 0.5));
    expect(Math.abs(mean(products))).toBeLessThan(4 / Math.sqrt(seeds));
  });

  it('tells apart seeds beyond 32 bits and below zero', () => {
    const firsts = [5, 5 + 2 ** 32, 5 - 2 ** 32, -5, 2 ** 52 + 5].map((seed) => randomSource(seed).uniform());
    expect(new Set(firsts).size).toBe(firsts.length);
  });
});
