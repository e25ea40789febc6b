import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ageNeed, crowdedPace, usedLightMJ } from '../../src/plant/index.ts';

describe('light', () => {
  test('of a day of 15 MJ is used as it is, of brighter days less and of dull days more in proportion', () => {
    expect(usedLightMJ(15, 12)).toBeCloseTo(15, 12);
    expect(usedLightMJ(28, 12) / 28).toBeLessThan(1);
    expect(usedLightMJ(4, 12) / 4).toBeGreaterThan(1);
  });

  test('more of it never gives less', () => {
    const day = fc.double({ min: 0, max: 35, noNaN: true });
    fc.assert(
      fc.property(day, day, (a, b) => {
        expect(usedLightMJ(Math.max(a, b), 12)).toBeGreaterThanOrEqual(usedLightMJ(Math.min(a, b), 12));
      }),
      { seed: 20261128 },
    );
  });
});

test('crowded seedlings slow down and stand still at their limit', () => {
  expect(crowdedPace(0, 4)).toBe(1);
  expect(crowdedPace(2, 4)).toBeCloseTo(0.75, 12);
  expect(crowdedPace(4, 4)).toBe(0);
  expect(crowdedPace(9, 4)).toBe(0);
});

test('near its need a kind asks for its whole age, under far longer days for a third', () => {
  expect(ageNeed(0.5)).toBe(1);
  expect(ageNeed(2)).toBe(1);
  expect(ageNeed(3.25)).toBeLessThan(0.7);
  expect(ageNeed(6)).toBeCloseTo(0.33, 12);
});
