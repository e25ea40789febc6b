import { expect, test } from 'vitest';
import { climateOf } from '../../../../test/season/places.ts';
import {
  type Kept,
  keepingCurve,
  lastsDay,
  percentiles,
  type StorePlace,
  storeClimateOf,
  storeDrawsOf,
  storeLooks,
  storePlaces,
  takenInAfter,
  usualLifted,
} from '../../src/index.ts';

const climate = climateOf(53.8, -1.55);
const liftedAt = 231;
const months = [
  [1, 2],
  [5, 7],
  [8, 10],
] as const;

const looksIn = (store: StorePlace, keepsMonths: Kept['keepsMonths'], looked: number[] = []) =>
  storeLooks({ keepsMonths, ...usualLifted }, storeClimateOf(climate, store), liftedAt, looked);

test('looks come at a quarter, half and three quarters of what a lot lasts in its store, once it is dry', () => {
  for (const store of storePlaces)
    for (const keepsMonths of months) {
      const { lasts, looks } = looksIn(store, keepsMonths);
      const all = [1, 2, 3].map((number) => ({
        number,
        after: Math.round((number * lasts) / 4),
        isDone: false,
      }));
      expect(looks).toEqual(all.filter(({ after }) => after > takenInAfter));
    }
});

test('the time is the middle of what the stores tried give, within a week in ten', () => {
  const lot = { keepsMonths: [5, 7], ...usualLifted } as const;
  const air = storeClimateOf(climate, 'cellar');
  const tried = storeDrawsOf(200, 3).map((draw) => lastsDay(keepingCurve(lot, air, liftedAt, draw)));
  expect(Math.abs(looksIn('cellar', [5, 7]).lasts / percentiles(tried).p50 - 1)).toBeLessThan(0.1);
});

test('keepers are looked at later than sweet onions, and in a fridge later than in a kitchen', () => {
  const last = (...asked: Parameters<typeof looksIn>) => looksIn(...asked).looks.at(-1)?.after ?? 0;
  expect(last('cellar', [8, 10])).toBeGreaterThan(last('cellar', [5, 7]));
  expect(last('cellar', [5, 7])).toBeGreaterThan(last('cellar', [1, 2]));
  expect(last('fridge', [5, 7])).toBeGreaterThan(last('kitchen', [5, 7]));
});

test('a look noted does the one it is nearest to', () => {
  const [, second] = looksIn('cellar', [5, 7]).looks;
  const { looks } = looksIn('cellar', [5, 7], [second.after - 3]);
  expect(looks.map(({ isDone }) => isDone)).toEqual([false, true, false]);
});
