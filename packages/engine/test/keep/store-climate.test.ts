import { describe, expect, test } from 'vitest';
import { readClimateNodes } from '../../../data/src/node.ts';
import { climateAt, type StorePlace, storeClimateOf, storePlaces } from '../../src/index.ts';

const nodes = readClimateNodes(new URL('../../../data/assets/climate.bin', import.meta.url).pathname);
const places = {
  Leeds: climateAt(nodes, 53.8, -1.55, 60),
  Lisbon: climateAt(nodes, 38.72, -9.14, 50),
  Nairobi: climateAt(nodes, -1.29, 36.82, 1700),
  Boise: climateAt(nodes, 43.62, -116.2, 825),
  Niamey: climateAt(nodes, 13.51, 2.11, 206),
};
type Place = keyof typeof places;
const airOf = (place: Place, store: StorePlace) => storeClimateOf(places[place], store);
const most = (values: Float64Array) => Math.max(...values);
const least = (values: Float64Array) => Math.min(...values);
const swing = (values: Float64Array) => most(values) - least(values);

describe.each(Object.keys(places) as Place[])('stores at %s', (place) => {
  test('have air that can be', () => {
    for (const store of storePlaces) {
      const { tempC, humidityPct } = airOf(place, store);
      expect(least(tempC)).toBeGreaterThan(-10);
      expect(most(tempC)).toBeLessThan(40);
      expect(least(humidityPct)).toBeGreaterThanOrEqual(15);
      expect(most(humidityPct)).toBeLessThanOrEqual(98);
    }
  });

  test('swing least below ground and most in a shed, a fridge not at all', () => {
    const swingOf = (store: StorePlace) => swing(airOf(place, store).tempC);
    expect(swingOf('fridge')).toBe(0);
    expect(swingOf('cellar')).toBeLessThan(swingOf('garage'));
    expect(swingOf('garage')).toBeLessThan(swingOf('shed'));
    expect(least(airOf(place, 'cellar').tempC)).toBeGreaterThan(0);
  });
});

test('a heated kitchen in winter is dry, and a hot one follows the air outdoors', () => {
  const { tempC, humidityPct } = airOf('Boise', 'kitchen');
  expect(tempC[15]).toBeGreaterThan(16);
  expect(humidityPct[15]).toBeLessThan(50);
  expect(most(airOf('Niamey', 'kitchen').tempC)).toBeGreaterThan(29);
});

test('a garage at Boise is colder in winter than a cellar', () => {
  expect(least(airOf('Boise', 'garage').tempC)).toBeLessThan(least(airOf('Boise', 'cellar').tempC));
});

test('air of the grower stands the year round', () => {
  const { tempC, humidityPct } = storeClimateOf(places.Leeds, { tempC: 6, humidityPct: 72 });
  expect(new Set(tempC)).toEqual(new Set([6]));
  expect(new Set(humidityPct)).toEqual(new Set([72]));
});
