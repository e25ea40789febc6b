import { describe, expect, test } from 'vitest';
import type { PlantState } from '../../../src/season/plant-state.ts';
import { bulbing } from '../../../src/season/steps/index.ts';
import { plantOf, type SteadyDay, steadyTerms } from '../steady-bed.ts';

// Needs 14 h and a rate of 0.3 a day, in full from 14.5 h; loses 0.05 a day; of age at 500 °C d, with five leaves.
type Day = {
  hours?: number;
  rooted?: boolean;
  leafAreaIndex?: number;
  covered?: boolean;
  open?: Partial<SteadyDay>;
};
const after = (other: Partial<PlantState>, day: Day = {}) => {
  const plant = plantOf(other);
  const { hours = 15, rooted = true, leafAreaIndex = 0, covered = false, open } = day;
  bulbing(
    plant,
    steadyTerms({ open, covered: { bulbingTemp: 0.5 } }),
    hours,
    0,
    covered,
    rooted,
    leafAreaIndex,
  );
  return plant;
};

describe('a long day', () => {
  test('brings a bulb nearer, as far as its length, warmth and the canopy go', () => {
    expect(after({}).bulbing).toBeCloseTo(0.25, 12);
    expect(after({}, { hours: 14.25 }).bulbing).toBeCloseTo(0.1, 12);
    expect(after({}, { open: { bulbingTemp: 0.5 } }).bulbing).toBeCloseTo(0.1, 12);
    expect(after({}, { covered: true }).bulbing).toBeCloseTo(0.1, 12);
    // six per cent for each unit of leaf area index (size ours)
    expect(after({}, { leafAreaIndex: 2 }).bulbing).toBeCloseTo(0.3 * 1.12 - 0.05, 12);
  });

  test('does nothing to a plant too young or with too few leaves', () => {
    expect(after({ age: 499 }).bulbing).toBe(0);
    expect(after({ leaves: 4.9 }).bulbing).toBe(0);
    expect(after({ age: 500, leaves: 5 }).bulbing).toBeCloseTo(0.25, 12);
  });

  test('turns plants of a third of that age where it is far above the need', () => {
    expect(after({ age: 170 }, { hours: 18.5 }).bulbing).toBeCloseTo(0.25, 12);
    expect(after({ age: 160 }, { hours: 18.5 }).bulbing).toBe(0);
  });

  test('does nothing to a plant that roots, which keeps what it has', () => {
    expect(after({ bulbing: 0.5 }, { rooted: false }).bulbing).toBe(0.5);
  });
});

describe('a day below the need', () => {
  test('takes back, from a rooting plant too, and never below nothing', () => {
    expect(after({ bulbing: 0.5 }, { hours: 13 }).bulbing).toBeCloseTo(0.45, 12);
    expect(after({ bulbing: 0.5 }, { hours: 13, rooted: false }).bulbing).toBeCloseTo(0.45, 12);
    expect(after({ bulbing: 0.03 }, { hours: 13 }).bulbing).toBe(0);
  });

  test('a marginal one loses more than it gains (decision 9)', () => {
    expect(after({ bulbing: 0.5 }, { hours: 14.05 }).bulbing).toBeLessThan(0.5);
  });
});

describe('bulbs start', () => {
  test('when the way is done, and the cold of the last weeks is forgotten', () => {
    const recentCold = new Float64Array(28).fill(0.5);
    const plant = after({ bulbing: 0.8, coldDays: 20, recentCold });
    expect(plant).toMatchObject({ hasBulb: true, bulbing: 1 });
    expect(plant.coldDays).toBeCloseTo(6, 12);
  });

  test('no sooner', () => {
    expect(after({ bulbing: 0.7, coldDays: 20 })).toMatchObject({ hasBulb: false, coldDays: 20 });
  });
});
