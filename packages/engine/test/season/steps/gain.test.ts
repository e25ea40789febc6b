import { describe, expect, test } from 'vitest';
import type { PlantState } from '../../../src/season/plant-state.ts';
import { gain } from '../../../src/season/steps/index.ts';
import { plantOf, type SteadyDay, steadyCrop, steadyTerms } from '../steady-bed.ts';

type Day = {
  open?: Partial<SteadyDay>;
  stress?: number;
  intercepted?: number;
  standingCm2?: number;
  lightShare?: number;
  youngG?: number;
};
const grown = (other: Partial<PlantState>, day: Day = {}) => {
  const plant = plantOf(other);
  const { open, stress = 1, intercepted = 0.4, standingCm2 = 2000, lightShare = 1, youngG = 0.01 } = day;
  const crop = steadyCrop({ densityPerM2: 40 }, { lightShare, youngG });
  const canopy = { standingCm2, leafAreaIndex: 1, intercepted };
  gain(plant, steadyTerms({ crop, open, covered: { growthLight: 10 } }), 0, false, canopy, stress);
  return plant;
};

describe('a plant gains the less of what age and light allow', () => {
  test('small: a share of its own mass, 0.01 for each of nine degree days', () => {
    expect(grown({ shootG: 0.1 }).shootG).toBeCloseTo(0.109, 12);
    expect(grown({ shootG: 0.1, bulbG: 0.1, hasBulb: true, ripening: 0.3 }).bulbG).toBeCloseTo(0.118, 12);
  });

  test('large: a gram for each MJ caught, shared among 40 plants', () => {
    // 15 MJ · 0.4 / 40
    expect(grown({ shootG: 5 }).shootG).toBeCloseTo(5.15, 12);
    expect(grown({ shootG: 5 }, { intercepted: 0.2 }).shootG).toBeCloseTo(5.075, 12);
  });

  test('in shade only the light that is left', () => {
    expect(grown({ shootG: 5 }, { lightShare: 0.5 }).shootG).toBeCloseTo(5.075, 12);
  });

  test('under a cover the light that it lets through', () => {
    const plant = plantOf({ shootG: 5 });
    const terms = steadyTerms({ covered: { growthLight: 10 } });
    gain(plant, terms, 0, true, { standingCm2: 2000, leafAreaIndex: 1, intercepted: 0.4 }, 1);
    expect(plant.shootG).toBeCloseTo(5.1, 12);
  });
});

test('thirst takes its share of the gain', () => {
  expect(grown({ shootG: 5 }, { stress: 0.5 }).shootG).toBeCloseTo(5.075, 12);
});

test('wet and warm spells take up to 35 % of it (common practice, no source)', () => {
  expect(grown({ shootG: 5 }, { open: { wetness: 0.9, tempMeanC: 20 } }).shootG).toBeCloseTo(
    5 + 0.65 * 0.15,
    12,
  );
  expect(grown({ shootG: 5 }, { open: { wetness: 0.9, tempMeanC: 14 } }).shootG).toBeCloseTo(5.15, 12);
});

describe('the shoot holds no more than its leaves can carry', () => {
  test('and what goes beyond is not made', () => {
    // 500 cm² of 0.01 g
    expect(grown({ shootG: 4.9 }, { standingCm2: 500 }).shootG).toBeCloseTo(5, 12);
  });

  test('but what is there does not go', () => {
    expect(grown({ shootG: 6 }, { standingCm2: 500 }).shootG).toBe(6);
  });

  test('which touches no young plant', () => {
    expect(grown({ shootG: 0.1 }, { standingCm2: 5, youngG: 1 }).shootG).toBeCloseTo(0.109, 12);
  });
});

describe('new dry matter goes to the bulb (shape: Wageningen seed-onion set)', () => {
  test.each([
    [0, 0.4],
    [0.15, 0.7],
    [0.3, 1],
    [0.9, 1],
  ])('at ripening %d a share of %d', (ripening, share) => {
    const plant = grown({ shootG: 5, bulbG: 1, hasBulb: true, ripening });
    expect(plant.bulbG).toBeCloseTo(1 + share * 0.15, 12);
    expect(plant.shootG).toBeCloseTo(5 + (1 - share) * 0.15, 12);
  });
});
