import { describe, expect, test } from 'vitest';
import type { PlantState } from '../../../src/season/plant-state.ts';
import { ripening } from '../../../src/season/steps/index.ts';
import { plantOf, type SteadyDay, steadyCrop, steadyTerms } from '../steady-bed.ts';

// Sixteen of 800 °C d a day: a fiftieth. Needs 14 h of day.
const bulb = { hasBulb: true, bulbing: 1 };
type Day = { hours?: number; covered?: boolean; densityPerM2?: number; open?: Partial<SteadyDay> };
const after = (
  other: Partial<PlantState>,
  { hours = 15, covered = false, densityPerM2 = 40, open }: Day = {},
) => {
  const plant = plantOf({ ...bulb, ...other });
  const crop = steadyCrop({ densityPerM2 });
  ripening(plant, steadyTerms({ crop, open, covered: { ripeningTT: 20 } }), hours, 0, covered);
  return plant;
};

describe('a bulb ripens', () => {
  test('by warmth', () => {
    expect(after({}).ripening).toBeCloseTo(0.02, 12);
    expect(after({ ripening: 0.7 }).ripening).toBeCloseTo(0.72, 12);
    expect(after({}, { open: { ripeningTT: 8 } }).ripening).toBeCloseTo(0.01, 12);
    expect(after({}, { covered: true }).ripening).toBeCloseTo(0.025, 12);
  });

  test('a fifth faster for each hour beyond two above the need, up to six', () => {
    expect(after({}, { hours: 16 }).ripening).toBeCloseTo(0.02, 12);
    expect(after({}, { hours: 18 }).ripening).toBeCloseTo(0.02 * 1.4, 12);
    expect(after({}, { hours: 24 }).ripening).toBeCloseTo(0.02 * 2.2, 12);
  });

  test('faster in a dense stand (Rumpel & Felczyński; Ituporanga; Beyeda)', () => {
    expect(after({}, { densityPerM2: 40 * Math.E }).ripening).toBeCloseTo(0.02 * 1.1, 12);
  });
});

describe('a young bulb turns back to leaves (direction: Kato 1964; Brewster 2008, p. 142)', () => {
  const isBackAfter = (days: number, day: Day, start: Partial<PlantState> = {}) => {
    const plant = plantOf({ ...bulb, ...start });
    const terms = steadyTerms({ open: { ripeningTT: 1, ...day.open } });
    for (let i = 0; i < days; i++) ripening(plant, terms, day.hours ?? 15, i, false);
    return plant.reverted;
  };

  test('after more than ten days half an hour below its need', () => {
    expect(isBackAfter(10, { hours: 13.4 })).toBe(false);
    expect(isBackAfter(11, { hours: 13.4 })).toBe(true);
    expect(isBackAfter(60, { hours: 13.6 })).toBe(false);
  });

  test('after more than ten cold days', () => {
    expect(isBackAfter(11, { open: { tempMeanC: 9.9 } })).toBe(true);
    expect(isBackAfter(60, { open: { tempMeanC: 10 } })).toBe(false);
  });

  test('not once it is three fifths ripe', () => {
    expect(isBackAfter(60, { hours: 13 }, { ripening: 0.61 })).toBe(false);
    expect(isBackAfter(11, { hours: 13 }, { ripening: 0.5 })).toBe(true);
  });

  test('good days make up for bad ones', () => {
    expect(after({ turnBack: 5 }).turnBack).toBe(4);
    expect(after({ turnBack: 0 }).turnBack).toBe(0);
    expect(after({ turnBack: 5 }, { hours: 13 }).turnBack).toBe(6);
  });

  test('by the cold under its cover', () => {
    const plant = plantOf(bulb);
    const terms = steadyTerms({ open: { tempMeanC: 8 }, covered: { tempMeanC: 12 } });
    ripening(plant, terms, 15, 0, true);
    expect(plant.turnBack).toBe(0);
  });
});
