import { describe, expect, test } from 'vitest';
import { weighPopulation } from '../../src/learn/population.ts';
import { randomSource } from '../../src/math/index.ts';

/** Weighed mean and standard deviation of one dimension. */
function told(dimensions: number, tell: (z: Float64Array) => number, of: number) {
  const { members, weights, effective } = weighPopulation(dimensions, 30, randomSource(9), tell);
  let total = 0;
  let sum = 0;
  members.forEach(({ z }, at) => {
    total += weights[at];
    sum += weights[at] * z[of];
  });
  const mean = sum / total;
  let squares = 0;
  members.forEach(({ z }, at) => {
    squares += weights[at] * (z[of] - mean) ** 2;
  });
  return { mean, sd: Math.sqrt(squares / total), effective, rounds: members.length / 300 };
}

// A standard normal seen once at x with error s is normal about x / (1 + s²) with variance s² / (1 + s²) (conjugate
// normal law, any textbook of Bayesian statistics).
describe('a population', () => {
  test.each([
    [0.5, 1],
    [2, 0.3],
    [4, 0.1],
    [-6, 0.5],
  ])('seen at %f with error %f comes to the conjugate law, however narrow', (x, s) => {
    const { mean, sd, effective } = told(1, (z) => -0.5 * ((x - z[0]) / s) ** 2, 0);
    const known = { mean: x / (1 + s * s), sd: s / Math.sqrt(1 + s * s) };
    expect(Math.abs(mean - known.mean)).toBeLessThan(0.15 * known.sd);
    expect(sd / known.sd).toBeGreaterThan(0.85);
    expect(sd / known.sd).toBeLessThan(1.15);
    expect(effective).toBeGreaterThan(100);
  });

  test('of four dimensions in which only a sum is seen keeps what the sum leaves open', () => {
    // x = a + b seen with error s: a is normal about x / (2 + s²) with variance 1 − 1 / (2 + s²)
    const [x, s] = [3, 0.2];
    const tell = (z: Float64Array) => -0.5 * ((x - z[0] - z[1]) / s) ** 2;
    const seen = told(4, tell, 0);
    expect(seen.mean).toBeCloseTo(x / (2 + s * s), 0);
    expect(seen.sd).toBeGreaterThan(0.85 * Math.sqrt(1 - 1 / (2 + s * s)));
    expect(seen.effective).toBeGreaterThan(100);
    const unseen = told(4, tell, 3);
    expect(Math.abs(unseen.mean)).toBeLessThan(0.25);
    expect(unseen.sd).toBeGreaterThan(0.8);
  });

  test('of which nothing was seen needs one round, and stays as it was', () => {
    const { mean, sd, effective, rounds } = told(3, () => 0, 1);
    expect(rounds).toBe(1);
    expect(effective).toBeCloseTo(300, 6);
    expect(mean).toBeCloseTo(0, 2);
    expect(sd).toBeCloseTo(1, 1);
  });
});
