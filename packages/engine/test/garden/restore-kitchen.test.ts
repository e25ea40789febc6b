import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { emptyGarden, gardenRanges, mostReadings, restoreGarden } from '../../src/garden/index.ts';
import { whole } from './whole-garden.ts';

const { kitchen } = whole;
const restored = (found: unknown) => restoreGarden({ ...emptyGarden(), kitchen: found });

test('a kitchen restored twice is restored once, whatever was in it', () => {
  const value = fc.oneof(
    fc.jsonValue(),
    fc.constantFrom(
      'cellar',
      'loft',
      4,
      0,
      101,
      900,
      -10,
      40.5,
      ['mild'],
      ['red', 'blue', 3],
      ['red', 'red'],
    ),
  );
  const fields = Object.keys(kitchen);
  const found = fc.oneof(
    fc.jsonValue(),
    fc.record(Object.fromEntries(fields.map((field) => [field, value])), { requiredKeys: [] }),
  );
  fc.assert(
    fc.property(found, (said) => {
      const { garden, changes } = restored(said);
      expect(restoreGarden(garden)).toEqual({ garden, changes: [] });
      expect(changes.every(({ code, path }) => code === 'emptied' && path.startsWith('kitchen'))).toBe(true);
      const { kitchen: kept } = garden;
      for (const field of ['people', 'gramsPerWeek', 'storeTempC', 'storeHumidityPct'] as const) {
        const [low, high] = gardenRanges[field];
        const number = kept?.[field] ?? low;
        expect(number).toBeGreaterThanOrEqual(low);
        expect(number).toBeLessThanOrEqual(high);
      }
      // what this version does not know stays
      if (kept) expect(kept.cook).toEqual((said as Record<string, unknown>).cook);
    }),
    { seed: 20270503, numRuns: 300 },
  );
});

test('a garden of before there were kitchens has none, and nothing is told', () => {
  const { kitchen: _, ...before } = whole;
  const { garden, changes } = restoreGarden(before);
  expect(garden).toEqual({ ...before, kitchen: null });
  expect(changes).toEqual([]);
});

test.each([[['cellar']], ['cellar'], [4]])('%j is no kitchen, and is told', (found) => {
  const { garden, changes } = restored(found);
  expect(garden).toEqual(emptyGarden());
  expect(changes.map(({ code, path }) => `${code} ${path}`)).toEqual(['emptied kitchen']);
});

describe('of a kitchen', () => {
  test.each([
    ['people', 0],
    ['people', 101],
    ['gramsPerWeek', '900'],
    ['gramsPerWeek', 1_000_001],
    ['store', 'loft'],
    ['storeTempC', -11],
    ['storeTempC', 41],
    ['storeHumidityPct', 101],
  ])('%s %j is emptied and the rest kept', (field, found) => {
    const { garden, changes } = restored({ ...kitchen, [field]: found });
    expect(garden.kitchen).toEqual({ ...kitchen, [field]: null });
    expect(changes).toEqual([{ code: 'emptied', path: `kitchen.${field}`, found: String(found) }]);
  });

  test('readings without day, store or temperature go and are told; those that are stay as they are', () => {
    const good = { date: '2027-02-01', store: 'cellar', tempC: 6, humidityPct: null };
    const { garden, changes } = restored({
      ...kitchen,
      storeReadings: [
        { ...good, date: '2027-02-30' },
        { ...good, store: 'loft' },
        { ...good, tempC: 60 },
        3,
        { ...good, humidityPct: 120 },
        good,
      ],
    });
    expect(garden.kitchen?.storeReadings).toEqual([good, good]);
    const at = (path: string) => `kitchen.storeReadings[${path}`;
    expect(changes.map(({ path }) => path)).toEqual(['0]', '1]', '2]', '3]', '4].humidityPct'].map(at));
    const many = restored({ ...kitchen, storeReadings: Array(mostReadings + 1).fill(good) });
    expect(many.garden.kitchen?.storeReadings).toEqual([]);
    expect(restored({ ...kitchen, storeReadings: undefined }).changes).toEqual([]);
  });

  test('likes that are none go and are told, those that are stay', () => {
    const { garden, changes } = restored({ ...kitchen, likes: ['red', 'sweet', 'mild'] });
    expect(garden.kitchen?.likes).toEqual(['mild', 'red']);
    expect(changes.map(({ path }) => path)).toEqual(['kitchen.likes']);
  });
});
