import { expect, test } from 'vitest';
import { dayNumber } from '../../src/calendar/index.ts';
import { defaultPlantValues, type PlantValues } from '../../src/plant/index.ts';
import { openSite, planDefaults, referenceBulbG, runPlan } from '../../src/season/index.ts';
import { climateOf } from '../weather/climates.ts';

const mean = [4, 5, 7, 10, 13, 16, 18, 18, 15, 11, 7, 4];
const site = () => openSite({ climate: climateOf({ latitudeDeg: 52, mean }), years: 10, seed: 1 });
const plan = (year: number) =>
  ({ ...planDefaults, type: 'northern-long', start: 'sets', startDay: dayNumber(year, 4, 16) }) as const;

test('what a place is measured by does not hang on which plan is asked first', () => {
  const ordinary = site();
  const turned = site();
  const first = [2027, 2028, 2030].map((year) => runPlan(ordinary, plan(year)));
  const last = [2030, 2028, 2027].map((year) => runPlan(turned, plan(year))).reverse();
  expect(last).toEqual(first);
  expect(referenceBulbG(turned, plan(2030))).toBe(referenceBulbG(site(), plan(2027)));
});

test('a kind from far off makes no local bulb small', () => {
  const seed = { ...plan(2027), start: 'direct-seed', startDay: dayNumber(2027, 3, 25) } as const;
  // grown wherever it is planned, but no measure of the place
  expect(runPlan(site(), { ...seed, type: 'short' }).plan.type).toBe('short');
  expect(referenceBulbG(site(), seed)).toBeGreaterThan(0);
  expect(referenceBulbG(site(), { ...seed, type: 'short' })).toBe(referenceBulbG(site(), seed));
});

test('a crop that runs to flower is no measure of the place', () => {
  const climate = climateOf({ latitudeDeg: 52, mean });
  const types = Object.fromEntries(
    Object.entries(defaultPlantValues.types).map(([type, own]) => [type, { ...own, vernalHalfD: -100 }]),
  ) as PlantValues['types'];
  const flowering = openSite({ climate, years: 10, seed: 1, values: { ...defaultPlantValues, types } });
  expect(referenceBulbG(flowering, plan(2027))).toBe(0);
  expect(referenceBulbG(site(), plan(2027))).toBeGreaterThan(0);
});
