import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  ageNeed,
  crowdedPace,
  glazingShare,
  growthTemperatureFactor,
  interceptedShare,
  lampMJPerHour,
  nurseryPerM2,
  seedlingG,
  usedLightMJ,
  wetSpellFactor,
  youngLeafArea,
} from '../../src/plant/index.ts';

describe('light', () => {
  test('of a day of 15 MJ is used as it is, of brighter days less and of dull days more in proportion', () => {
    expect(usedLightMJ(15, 12)).toBeCloseTo(15, 12);
    expect(usedLightMJ(28, 12) / 28).toBeLessThan(1);
    expect(usedLightMJ(4, 12) / 4).toBeGreaterThan(1);
  });

  test('goes as Rs · (1 + 15 / half) / (1 + Rs / half)', () => {
    expect(usedLightMJ(30, 15)).toBeCloseTo(20, 12);
    expect(usedLightMJ(0, 15)).toBe(0);
  });

  test('is caught by leaves as 1 − e^(−depth), Beer–Lambert', () => {
    for (const depth of [0, 0.1, 0.7, 2.3, 7.9])
      expect(interceptedShare(depth)).toBeCloseTo(1 - Math.exp(-depth), 6);
    expect(interceptedShare(50)).toBe(1);
  });

  test('of lamps is worth 150 µmol of PAR for each hour, and glass takes half of the day (memory)', () => {
    // 4.57 µmol a joule of PAR (sunlight), which is half of total solar
    expect(lampMJPerHour).toBeCloseTo((150 / 4.57) * 3600 * 2e-6, 1);
    expect(lampMJPerHour).toBe(0.25);
    expect(glazingShare).toBe(0.5);
    expect(nurseryPerM2).toBe(1000);
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

test('growth uses light in full from 14 to 27 °C, and not at 4 or 40 °C', () => {
  // ends: Wageningen seed-onion set, Brewster 1979; slopes memory
  const at = growthTemperatureFactor;
  for (const [tempC, factor] of [
    [4, 0],
    [9, 0.5],
    [14, 1],
    [19.9, 1],
    [20, 1],
    [27, 1],
    [33.5, 0.5],
    [40, 0],
  ])
    expect(at(tempC)).toBeCloseTo(factor, 12);
  expect(at(-5)).toBe(0);
});

test('the leaf area of a young plant follows its mass (Brewster 2008, p. 129, Eqns 4.17)', () => {
  expect(seedlingG).toBeCloseTo(Math.exp(-6.086), 4);
  expect(youngLeafArea(seedlingG)).toBeCloseTo(0.5, 12);
  expect(youngLeafArea(100 * seedlingG)).toBeCloseTo(0.5 * 100 ** 0.973, 9);
});

test('the series for the leaf area of a young plant comes to the power, to 1e-13 of it, at any mass', () => {
  fc.assert(
    // from far under a seedling to far over any young plant, where no series runs
    fc.property(fc.double({ min: -12, max: 6, noNaN: true }), (logG) => {
      const massG = Math.exp(logG);
      const power = 0.5 * (massG / seedlingG) ** 0.973;
      expect(Math.abs(youngLeafArea(massG) / power - 1)).toBeLessThan(1e-13);
    }),
    { seed: 4, numRuns: 2000 },
  );
});

test('disease takes up to 35 % in long wet and warm spells (common practice, no source)', () => {
  expect(wetSpellFactor(0.45, 25)).toBe(1);
  expect(wetSpellFactor(0.9, 14)).toBe(1);
  expect(wetSpellFactor(0.675, 25)).toBeCloseTo(1 - 0.35 / 2, 12);
  expect(wetSpellFactor(0.9, 17)).toBeCloseTo(1 - 0.35 / 2, 12);
  expect(wetSpellFactor(1, 30)).toBeCloseTo(0.65, 12);
});
