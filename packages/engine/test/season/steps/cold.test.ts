import { describe, expect, test } from 'vitest';
import { emptyPlant, type PlantState } from '../../../src/season/plant-state.ts';
import { forgetRecentCold } from '../../../src/season/steps/cold.ts';
import { cold } from '../../../src/season/steps/index.ts';
import { plantOf, type SteadyDay, steadyTerms } from '../steady-bed.ts';

/** Big enough to be turned in full: e times the bolting size of 1 g. */
const big = { shootG: Math.E };
const chilled = { cold: 0.8, tempMeanC: 8 };
const after = (other: Partial<PlantState>, open: Partial<SteadyDay>, day = 0) => {
  const plant = plantOf(other);
  cold(plant, steadyTerms({ open }), day, day, false);
  return plant.coldDays;
};

describe('cold', () => {
  test('counts in full for a big plant, by half at half the span, and for none up to the bolting size', () => {
    expect(after(big, chilled)).toBeCloseTo(0.8, 12);
    expect(after({ shootG: Math.exp(0.5) }, chilled)).toBeCloseTo(0.4, 12);
    expect(after({ shootG: 1 }, chilled)).toBe(0);
  });

  test('counts at its pace for sets, whose store has settled them', () => {
    expect(after({ ...big, coldPace: 0.1 }, chilled)).toBeCloseTo(0.08, 12);
  });

  test('shows no stalk when it comes in the last seventeen weeks (memory)', () => {
    // the season ends after 300 days
    expect(after(big, chilled, 179)).toBeCloseTo(0.8, 12);
    expect(after(big, chilled, 180)).toBe(0);
  });

  test('is that of the air under the cover', () => {
    const plant = plantOf(big);
    cold(plant, steadyTerms({ open: chilled, covered: { cold: 0.3 } }), 0, 0, true);
    expect(plant.coldDays).toBeCloseTo(0.3, 12);
  });
});

describe('warmth', () => {
  // half a day for each day above 20 °C (memory; direction Yamasaki 2000)
  test('takes cold back, above 20 °C only', () => {
    expect(after({ coldDays: 10 }, { tempMeanC: 20.1 })).toBe(9.5);
    expect(after({ coldDays: 10 }, { tempMeanC: 20 })).toBe(10);
  });

  test('takes back no more than there is, nor what a set brought from its store', () => {
    expect(after({ coldDays: 0.3 }, { tempMeanC: 25 })).toBe(0);
    expect(after({ coldDays: 30.2, storeColdDays: 30 }, { tempMeanC: 25 })).toBe(30);
    expect(after({ coldDays: 30, storeColdDays: 30 }, { tempMeanC: 25 })).toBe(30);
  });

  test('is that of the air under the cover', () => {
    const plant = plantOf({ coldDays: 10 });
    cold(plant, steadyTerms({ open: { tempMeanC: 18 }, covered: { tempMeanC: 22 } }), 0, 0, true);
    expect(plant.coldDays).toBe(9.5);
  });
});

describe('when bulbs start the cold of the last four weeks is forgotten (Holdsworth & Heath IV; length memory)', () => {
  const spell = (plant: PlantState, open: Partial<SteadyDay>, from: number, to: number) => {
    const terms = steadyTerms({ open });
    for (let day = from; day < to; day++) cold(plant, terms, day, day, false);
  };

  test('and no more', () => {
    const plant = plantOf(big);
    spell(plant, { cold: 1, tempMeanC: 9 }, 0, 40);
    forgetRecentCold(plant);
    expect(plant.coldDays).toBeCloseTo(12, 9);
  });

  test('cold that is four weeks old stays', () => {
    const plant = plantOf(big);
    spell(plant, { cold: 1, tempMeanC: 9 }, 0, 28);
    spell(plant, {}, 28, 56);
    forgetRecentCold(plant);
    expect(plant.coldDays).toBeCloseTo(28, 9);
  });

  test('and never what a set brought', () => {
    const plant = plantOf({ ...big, coldDays: 30, storeColdDays: 30 });
    spell(plant, { cold: 1, tempMeanC: 9 }, 0, 4);
    spell(plant, { cold: 0, tempMeanC: 25 }, 4, 6);
    forgetRecentCold(plant);
    expect(plant.coldDays).toBe(30);
  });
});

test('a new plant has met no cold', () => {
  expect(emptyPlant().recentCold.every((met) => met === 0)).toBe(true);
});
