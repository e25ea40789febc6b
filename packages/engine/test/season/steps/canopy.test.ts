import { expect, test } from 'vitest';
import { canopyOf } from '../../../src/season/steps/index.ts';
import { plantOf, steadyCrop, steadyTerms } from '../steady-bed.ts';

// every leaf has 100 cm²
const areaTotals = Float64Array.from({ length: 42 }, (_, leaf) => 100 * leaf);
const terms = steadyTerms({ crop: steadyCrop({ densityPerM2: 40 }, { areaTotals }) });
const large = { leaves: 8, green: 3, shootG: 50 };

test('the leaf area of a grown plant is that of its green leaves, and catches light by the Beer–Lambert law', () => {
  const canopy = canopyOf(plantOf(large), terms);
  expect(canopy.standingCm2).toBeCloseTo(300, 9);
  expect(canopy.leafAreaIndex).toBeCloseTo((300 * 40) / 10_000, 12);
  expect(canopy.intercepted).toBeCloseTo(1 - Math.exp(-0.5 * 1.2), 6);
});

test('the dead leaves are the oldest: of early leaves, which are small, little is lost', () => {
  const growing = steadyTerms({ crop: steadyCrop({}, { areaTotals: areaTotals.map((x) => x ** 2) }) });
  // leaves 6…8 of 800² − 500²
  expect(canopyOf(plantOf(large), growing).standingCm2).toBeCloseTo(800 ** 2 - 500 ** 2, 6);
});

test('the leaf area of a young plant follows its mass (Brewster 2008, p. 129, Eqns 4.17)', () => {
  // ten times the mass of a seedling has 10^0.973 times its half a square centimetre
  const { leafAreaIndex, standingCm2 } = canopyOf(plantOf({ ...large, shootG: 0.0227 }), terms);
  expect(leafAreaIndex).toBeCloseTo((0.5 * 10 ** 0.973 * 40) / 10_000, 9);
  expect(standingCm2).toBeCloseTo(300, 9);
});

test('leaves fade to 15 % at neck fall, from ripening 0.3 on (memory)', () => {
  const share = (ripening: number) =>
    canopyOf(plantOf({ ...large, ripening }), terms).leafAreaIndex /
    canopyOf(plantOf(large), terms).leafAreaIndex;
  expect(share(0.3)).toBe(1);
  expect(share(0.65)).toBeCloseTo(0.575, 12);
  expect(share(1)).toBeCloseTo(0.15, 12);
});
