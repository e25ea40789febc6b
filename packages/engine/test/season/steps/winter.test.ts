import { describe, expect, test } from 'vitest';
import type { PlantState } from '../../../src/season/plant-state.ts';
import { winter } from '../../../src/season/steps/index.ts';
import { plantOf, type SteadyDay, steadyCrop, steadyTerms } from '../steady-bed.ts';

const night = (plant: PlantState, open: Partial<SteadyDay>, cover: 'none' | 'fleece' | 'tunnel' = 'none') =>
  winter(plant, steadyTerms({ crop: steadyCrop({ cover }), open }), 0, cover !== 'none');
/** Half way between air and bed lies the growing point: −10 °C (decision 8). */
const tenBelow = { tempMinC: -16, soilMeanC: -4, tempMeanC: -5 };
const soft = { leaves: 4, recentC: 20 };

describe('a night of frost', () => {
  test('takes a quarter of the stand for each degree below what the plants stand', () => {
    // four leaves, not hardened: −8.5 °C (memory); 1.5 °C below it of the 4 °C that take all
    const plant = plantOf(soft);
    expect(night(plant, tenBelow)).toBe(true);
    expect(plant.aliveShare).toBeCloseTo(1 - 1.5 / 4, 12);
    night(plant, tenBelow);
    expect(plant.aliveShare).toBeCloseTo((1 - 1.5 / 4) ** 2, 12);
  });

  test('leaves hardened plants alone to −11 °C (Brewster 2008, p. 289)', () => {
    const plant = plantOf({ leaves: 4, recentC: 5 });
    night(plant, tenBelow);
    expect(plant.aliveShare).toBe(1);
  });

  test('that takes all but a trace ends the season', () => {
    const plant = plantOf(soft);
    expect(night(plant, { tempMinC: -26, soilMeanC: 0, tempMeanC: -5 })).toBe(false);
    expect(plant.aliveShare).toBe(0);
  });

  test('that leaves two plants in a hundred is worth growing on, and no less (ours)', () => {
    const more = plantOf({ ...soft, aliveShare: 0.033 });
    expect(night(more, tenBelow)).toBe(true);
    expect(more.aliveShare).toBeCloseTo(0.033 * 0.625, 12);
    const fewer = plantOf({ ...soft, aliveShare: 0.031 });
    expect(night(fewer, tenBelow)).toBe(false);
  });

  test('is milder under a cover, by 3 °C under fleece', () => {
    const underFleece = plantOf(soft);
    night(underFleece, tenBelow, 'fleece');
    expect(underFleece.aliveShare).toBe(1);
    // 12.5 °C below zero would take all; fleece leaves −9.5 °C, 1 °C below −8.5
    const colder = plantOf(soft);
    night(colder, { ...tenBelow, tempMinC: -21 }, 'fleece');
    expect(colder.aliveShare).toBeCloseTo(0.75, 12);
    const inTunnel = plantOf(soft);
    night(inTunnel, { ...tenBelow, tempMinC: -21 }, 'tunnel');
    expect(inTunnel.aliveShare).toBe(1);
  });
});

describe('snow (memory)', () => {
  test('of half a metre shelters from a night that would leave none', () => {
    const open = { tempMinC: -26, soilMeanC: 0, tempMeanC: -5 };
    const plant = plantOf({ ...soft, snowMm: 80 });
    expect(night(plant, open)).toBe(true);
    expect(plant.aliveShare).toBe(1);
  });

  test('that is thin shelters none', () => {
    const plant = plantOf({ ...soft, snowMm: 10 });
    night(plant, tenBelow);
    expect(plant.aliveShare).toBeCloseTo(1 - 1.5 / 4, 12);
  });

  test('gathers on frosty days, is met the night after, and melts by 3 mm a degree', () => {
    const plant = plantOf();
    night(plant, { tempMinC: -3, tempMeanC: -1, rainMm: 7 });
    expect(plant.snowMm).toBe(7);
    night(plant, { tempMinC: -3, tempMeanC: -1, rainMm: 7 });
    expect(plant.snowMm).toBe(14);
    // days without frost thaw it too
    night(plant, { tempMinC: 1, tempMeanC: 3, rainMm: 7 });
    expect(plant.snowMm).toBe(5);
    night(plant, { tempMinC: 1, tempMeanC: 3 });
    expect(plant.snowMm).toBe(0);
  });

  test('does not lie where it never freezes', () => {
    const plant = plantOf();
    night(plant, { tempMinC: 1, tempMeanC: 3, rainMm: 20 });
    expect(plant.snowMm).toBe(0);
  });
});

describe('frost heave (direction common practice, no source)', () => {
  const wetThaw = { tempMinC: -2, tempMeanC: 1, soilMeanC: 1, wetness: 0.45 };

  test('lifts small plants night for night, and says how many', () => {
    const plant = plantOf({ shootG: 0.06 });
    night(plant, wetThaw);
    expect(plant.aliveShare).toBeCloseTo(0.9, 12);
    night(plant, wetThaw);
    expect(plant.aliveShare).toBeCloseTo(0.81, 12);
    expect(plant.liftedShare).toBeCloseTo(0.19, 12);
  });

  test('spares them under snow and under a cover', () => {
    const snowed = plantOf({ shootG: 0.06, snowMm: 1 });
    night(snowed, wetThaw);
    const covered = plantOf({ shootG: 0.06 });
    night(covered, wetThaw, 'fleece');
    expect([snowed.aliveShare, snowed.liftedShare, covered.aliveShare, covered.liftedShare]).toEqual([
      1, 0, 1, 0,
    ]);
  });
});

test('hardening follows the air a fourteenth of the way a day, under a cover that air', () => {
  const open = plantOf({ recentC: 1 });
  const terms = { open: { tempMeanC: 15 }, covered: { tempMeanC: 29 } };
  winter(open, steadyTerms(terms), 0, false);
  expect(open.recentC).toBeCloseTo(2, 12);
  const covered = plantOf({ recentC: 1 });
  winter(covered, steadyTerms(terms), 0, true);
  expect(covered.recentC).toBeCloseTo(3, 12);
});
