import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  leachingShare,
  onionSaltTolerance,
  saltStress,
  saltYieldShare,
  soilSaltDsPerM,
} from '../../src/bed/index.ts';

/** What water of some salt leaves of the yield, washed through as it is meant to be. */
function leftBy(waterDsPerM: number): number {
  return saltYieldShare(
    soilSaltDsPerM(waterDsPerM, leachingShare(waterDsPerM, onionSaltTolerance)),
    onionSaltTolerance,
  );
}

test('water of 0.8, 1.2, 1.8 and 2.9 dS/m leaves 100, 90, 75 and 50 % of the onions (Ayers & Westcot 1985, memory)', () => {
  expect(leftBy(0.78)).toBe(1);
  expect(leftBy(1.2)).toBeCloseTo(0.9, 1);
  expect(leftBy(1.8)).toBeCloseTo(0.75, 1);
  expect(leftBy(2.9)).toBeCloseTo(0.5, 1);
});

test('the share washed through keeps the soil at the threshold while it can', () => {
  for (const water of [0.1, 0.4, 0.7])
    expect(soilSaltDsPerM(water, leachingShare(water, onionSaltTolerance))).toBeCloseTo(1.2, 12);
  expect(leachingShare(0, onionSaltTolerance)).toBe(0);
  expect(soilSaltDsPerM(0, 0)).toBe(0);
});

const hundredths = fc.integer({ min: 0, max: 2000 }).map((n) => n / 100);

test('more salt never leaves more, and shares stay shares', () => {
  fc.assert(
    fc.property(hundredths, hundredths, (a, b) => {
      const [fresh, salt] = [Math.min(a, b), Math.max(a, b)];
      const washed = leachingShare(salt, onionSaltTolerance);
      const stress = saltStress(salt, onionSaltTolerance);
      expect(leftBy(salt)).toBeLessThanOrEqual(leftBy(fresh) + 1e-12);
      expect(washed).toBeGreaterThanOrEqual(leachingShare(fresh, onionSaltTolerance));
      for (const share of [leftBy(salt), washed, stress]) {
        expect(share).toBeGreaterThanOrEqual(0);
        expect(share).toBeLessThanOrEqual(1);
      }
    }),
    { seed: 89 },
  );
});
