import { describe, expect, test } from 'vitest';
import { dayNumber } from '../../src/calendar/index.ts';
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

  test('are sown in time for their two and a half leaves, and a week later would be late', () => {
    expect(leavesFrom(sown)).toBeGreaterThanOrEqual(plantingOut.leaves);
    expect(leavesFrom(sown + 7)).toBeLessThan(plantingOut.leaves);
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
