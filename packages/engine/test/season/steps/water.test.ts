import { describe, expect, test } from 'vitest';
import type { PlantState } from '../../../src/season/plant-state.ts';
import { water } from '../../../src/season/steps/index.ts';
import { plantOf, type SteadyDay, steadyCrop, steadyTerms } from '../steady-bed.ts';

// FAO-56 by hand: roots of 0.4 m in 100 mm a metre hold 40 mm (Eq. 82). Bare ground takes 0.7 (table 12) of 5 mm, 3.5 mm;
// at that evaporation the share drawn without stress is 0.30 + 0.04 · 1.5 = 0.36 (table 22), 14.4 mm.
const bed = { availableMmPerM: 100, readilyShare: 0.3 };
const thirst = (
  other: Partial<PlantState>,
  { kind = 'rain' as 'watered' | 'rain', open = {} as Partial<SteadyDay>, intercepted = 0 } = {},
) => {
  const plant = plantOf({ leaves: 8, ...other });
  const stress = water(plant, steadyTerms({ crop: steadyCrop({ water: kind }, bed), open }), 0, intercepted);
  return { stress, plant };
};

describe('a rain-fed bed', () => {
  test('thirsts from the share on that is drawn without stress', () => {
    expect(thirst({ depletionMm: 14.4 })).toMatchObject({ stress: 1, plant: { thirstyDays: 0 } });
    // Ks = (40 − 27.2) / ((1 − 0.36) · 40), Eq. 84
    const { stress, plant } = thirst({ depletionMm: 27.2, thirstyDays: 3 });
    expect(stress).toBeCloseTo(0.5, 12);
    expect(plant.thirstyDays).toBe(4);
    // what lacks water gives less
    expect(plant.depletionMm).toBeCloseTo(27.2 + 0.5 * 3.5, 12);
  });

  test('loses what the crop draws and gets the rain, of which a drizzle is lost', () => {
    expect(thirst({ depletionMm: 10 }).plant.depletionMm).toBeCloseTo(13.5, 12);
    expect(thirst({ depletionMm: 10 }, { open: { rainMm: 4 } }).plant.depletionMm).toBeCloseTo(9.5, 12);
    expect(thirst({ depletionMm: 10 }, { open: { rainMm: 0.9 } }).plant.depletionMm).toBeCloseTo(13.5, 12);
  });

  test('gives more under full leaf, 1.05 (table 12), and less with tops down, 0.75', () => {
    expect(thirst({}, { intercepted: 0.9 }).plant.depletionMm).toBeCloseTo(5.25, 12);
    expect(thirst({ ripening: 1 }, { intercepted: 0.9 }).plant.depletionMm).toBeCloseTo(3.75, 12);
  });

  test('holds less for the short roots of seedlings', () => {
    // 0.15 m (memory: FAO-56) hold 15 mm, of which 5.4 mm are drawn without stress
    expect(thirst({ leaves: 0, depletionMm: 5.3 }).stress).toBe(1);
    expect(thirst({ leaves: 0, depletionMm: 5.5 }).stress).toBeLessThan(1);
  });
});

test('a watered bed is refilled on the day on which stress would begin', () => {
  const { stress, plant } = thirst({ depletionMm: 14.5 }, { kind: 'watered' });
  expect(stress).toBe(1);
  expect(plant.thirstyDays).toBe(1);
  expect(plant.depletionMm).toBeCloseTo(3.5, 12);
});

test('a watered bed that nobody asks for stays as it is', () => {
  const plant = plantOf({ depletionMm: 30 });
  expect(water(plant, steadyTerms({ crop: steadyCrop({}, { ...bed, followsWater: false }) }), 0, 0)).toBe(1);
  expect(plant).toMatchObject({ depletionMm: 30, thirstyDays: 0 });
});
