import { restoreGarden } from '@neckfall/engine';
import { expect, test } from 'vitest';
import { byPlace } from '../../src/garden/by-place.ts';
import { findOwn } from '../../src/garden/own-onion.ts';

/** Entries that count how often one of their fields is looked at. */
function counted<Entry extends object>(entries: readonly Entry[], field: keyof Entry) {
  const looked = { times: 0 };
  const list = entries.map((entry) =>
    Object.defineProperty({ ...entry }, field, {
      get: () => {
        looked.times++;
        return entry[field];
      },
    }),
  );
  return { list, looked };
}

const size = 500;
const { garden } = restoreGarden({
  schema: 'neckfall/garden@1',
  places: Array.from({ length: size }, (_, at) => ({
    id: `place ${at}`,
    name: `Bank ${at}`,
    latitudeDeg: 52,
    longitudeDeg: -3,
  })),
  cultivars: Array.from({ length: size }, (_, at) => ({ name: `Ines’s Tin ${at}` })),
  plantings: Array.from({ length: size }, (_, at) => ({
    name: `Bed ${at}`,
    placeId: at % 2 ? `place ${at}` : 'gone',
  })),
});

test('own onions are looked through once, however many are asked for', () => {
  const { list, looked } = counted(garden.cultivars, 'name');
  for (const { name } of garden.cultivars) expect(findOwn(list, name)).toBeDefined();
  expect(looked.times).toBeLessThan(4 * size);
});

test('the first of own onions of one name is taken', () => {
  const own = [
    { name: 'Tin', id: 1 },
    { name: ' TIN ', id: 2 },
  ];
  expect(findOwn(own, 'tin')).toBe(own[0]);
  expect(findOwn(own, 'jar')).toBeUndefined();
});

test('plantings come under their places with a look at each', () => {
  const places = counted(garden.places, 'id');
  const { placed, lost } = byPlace({ ...garden, places: places.list });
  expect(placed.map(({ plantings: [{ name }] }) => name)).toEqual(
    garden.plantings.flatMap(({ name, placeId }) => (placeId === 'gone' ? [] : [name])),
  );
  expect(lost.plantings).toHaveLength(size / 2);
  expect(places.looked.times).toBeLessThan(4 * size);
});
