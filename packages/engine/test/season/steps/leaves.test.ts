import { describe, expect, test } from 'vitest';
import type { PlantState } from '../../../src/season/plant-state.ts';
import { leaves } from '../../../src/season/steps/index.ts';
import { plantOf, steadyTerms } from '../steady-bed.ts';

// Ten degree days a day; a leaf takes 100, one of the first three half as long again; nine hundred of leaf life.
const terms = steadyTerms({ covered: { leafTT: 20, lifeTT: 24 } });
const after = (other: Partial<PlantState>, { covered = false, rooted = true } = {}) => {
  const plant = plantOf(other);
  leaves(plant, terms, 0, covered, rooted);
  return plant;
};

describe('new leaves', () => {
  test('come by thermal time, the first three slower', () => {
    expect(after({ leaves: 4 }).leaves).toBeCloseTo(4.1, 12);
    expect(after({ leaves: 3 }).leaves).toBeCloseTo(3.1, 12);
    expect(after({ leaves: 2.9 }).leaves).toBeCloseTo(2.9 + 10 / 150, 12);
  });

  test('come faster in the warmth of a cover', () => {
    expect(after({ leaves: 4 }, { covered: true }).leaves).toBeCloseTo(4.2, 12);
  });

  test('are few once bulbs have started and none from a quarter of ripening on (memory)', () => {
    const bulb = { leaves: 8, hasBulb: true };
    expect(after({ ...bulb, ripening: 0.2 }).leaves).toBeCloseTo(8.06, 12);
    expect(after({ ...bulb, ripening: 0.25 }).leaves).toBe(8);
  });

  test('end at the limit of the tables', () => {
    expect(after({ leaves: 38.95 }).leaves).toBe(39);
    expect(after({ leaves: 39 }).leaves).toBe(39);
  });

  test('are as old as the day on which they appear', () => {
    const plant = after({ leaves: 3.95, lifeTT: 100 });
    expect(plant.leafBorn[4]).toBe(112);
    expect(plant.leafBorn[5]).toBe(0);
  });
});

describe('a plant that was moved', () => {
  test('makes neither leaf nor age while it roots', () => {
    const plant = after({ leaves: 4, age: 300, rootingTT: 50 }, { rooted: false });
    expect(plant).toMatchObject({ leaves: 4, age: 300, rootingTT: 40 });
  });

  test('ages once it has rooted', () => {
    expect(after({ age: 300 })).toMatchObject({ age: 310, rootingTT: 0 });
  });
});

describe('old leaves', () => {
  test('die when their life is over, oldest first, rooting or not', () => {
    const born = new Float64Array(42);
    born[2] = 30;
    born[3] = 500;
    expect(after({ leafBorn: born.slice(), lifeTT: 888 }).dead).toBe(0);
    expect(after({ leafBorn: born.slice(), lifeTT: 889 })).toMatchObject({ dead: 1, green: 4.1 });
    expect(after({ leafBorn: born.slice(), lifeTT: 920 }, { rooted: false })).toMatchObject({
      dead: 2,
      green: 3,
    });
  });

  test('do not count beyond nine green ones (common practice, no source)', () => {
    expect(after({ leaves: 12 }).green).toBe(9);
    expect(after({ leaves: 8 }).green).toBeCloseTo(8.1, 12);
  });
});
