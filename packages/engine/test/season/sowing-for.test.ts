import { describe, expect, test } from 'vitest';
import { dayNumber } from '../../src/calendar/index.ts';
import { defaultPlantValues } from '../../src/plant/index.ts';
import {
  openSite,
  type Plan,
  planDefaults,
  plantingOut,
  runnerOf,
  sowingFor,
} from '../../src/season/index.ts';
import { climateOf } from '../weather/climates.ts';

const mean = [4, 5, 7, 10, 13, 16, 18, 18, 15, 11, 7, 4];
const site = openSite({ climate: climateOf({ latitudeDeg: 52, mean }), years: 2, seed: 1 });
const outDay = dayNumber(2027, 4, 12);
const plan: Plan = {
  ...planDefaults,
  type: 'northern-long',
  start: 'raised-seedlings',
  startDay: 0,
  nurseryTempC: 15,
};
const leavesFrom = (sown: number, of = plan) => {
  const runner = runnerOf(site, { ...of, startDay: sown, plantOutDay: outDay });
  return runner.meanSeason().leavesPlanted;
};

describe('seedlings for a day of planting out', () => {
  const sown = sowingFor(site, plan, outDay);

  test.each([13, 14, 15, 16, 18, 20])(
    'at %d °C are sown in time for two and a half leaves, and a week later would be late',
    (nurseryTempC) => {
      const of = { ...plan, nurseryTempC };
      const day = sowingFor(site, of, outDay);
      // sown as early as can be they may still fall short
      if (outDay - day < 84) expect(leavesFrom(day, of)).toBeGreaterThanOrEqual(plantingOut.leaves);
      if (outDay - day > 28) expect(leavesFrom(day + 7, of)).toBeLessThan(plantingOut.leaves);
    },
  );

  test('of a quick kind are sown four weeks ahead all the same', () => {
    const growth = { ...defaultPlantValues.growth, phyllochron: 20, nurseryCrowdLeaves: 12 };
    const quick = openSite({
      climate: climateOf({ latitudeDeg: 52, mean }),
      years: 2,
      seed: 1,
      values: { ...defaultPlantValues, growth },
    });
    expect(sowingFor(quick, { ...plan, nurseryTempC: 20 }, outDay)).toBe(outDay - 28);
  });

  test('are sown whole weeks ahead, four at the least and twelve at the most', () => {
    expect((outDay - sown) % 7).toBe(0);
    expect(outDay - sown).toBeGreaterThanOrEqual(28);
    expect(outDay - sown).toBeLessThanOrEqual(84);
  });

  test('that are too cold to get there are sown twelve weeks ahead', () => {
    expect(sowingFor(site, { ...plan, nurseryTempC: 6 }, outDay)).toBe(outDay - 84);
  });

  test('are never sown later in a colder nursery', () => {
    for (const cooler of [10, 12, 14])
      expect(sowingFor(site, { ...plan, nurseryTempC: cooler }, outDay)).toBeLessThanOrEqual(
        sowingFor(site, { ...plan, nurseryTempC: cooler + 2 }, outDay),
      );
  });
});
