import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { emptyGarden, gardenSchemaName, longList, restoreGarden } from '../../src/garden/index.ts';
import { gardenEntries } from '../../src/limits/index.ts';
import { whole } from './whole-garden.ts';

test('a whole garden stays as it is, fields unknown here included', () => {
  expect(restoreGarden(whole)).toEqual({ garden: whole, changes: [] });
});

test('restoring again changes nothing more', () => {
  fc.assert(
    fc.property(
      fc.oneof(
        fc.jsonValue(),
        fc.record({
          schema: fc.constant(gardenSchemaName),
          places: fc.jsonValue(),
          beds: fc.jsonValue(),
          cultivars: fc.jsonValue(),
          plantings: fc.jsonValue(),
          jobs: fc.jsonValue(),
        }),
        fc.record({
          cultivars: fc.array(
            fc.record(
              {
                id: fc.constantFrom('a', 'b', '', 7),
                name: fc.oneof(fc.string(), fc.integer()),
                class: fc.constantFrom('short', 'long', 'longish', 3, null),
                packetHours: fc.oneof(fc.double(), fc.string(), fc.constant(14)),
                packetDays: fc.oneof(fc.integer(), fc.constant(null)),
                keepsMonths: fc.oneof(fc.array(fc.double(), { maxLength: 3 }), fc.constant([2, 5])),
              },
              { requiredKeys: [] },
            ),
          ),
        }),
      ),
      (found) => {
        const { garden } = restoreGarden(found);
        expect(restoreGarden(garden)).toEqual({ garden, changes: [] });
        expect(new Set(garden.cultivars.map(({ id }) => id)).size).toBe(garden.cultivars.length);
      },
    ),
    { seed: 20270503, numRuns: 300 },
  );
});

describe('damage is mended and told', () => {
  test.each([[null], [7], ['onions'], [[whole]]])('%j is no garden', (found) => {
    const { garden, changes } = restoreGarden(found);
    expect(garden).toEqual(emptyGarden());
    expect(changes.map(({ code }) => code)).toEqual(['not-a-garden']);
  });

  test('of a later version is read for what is known', () => {
    const { garden, changes } = restoreGarden({ ...whole, schema: 'neckfall/garden@2' });
    expect(garden.cultivars).toHaveLength(1);
    expect(changes).toEqual([{ code: 'newer', path: 'schema', found: 'neckfall/garden@2' }]);
  });

  test('a value out of its range is emptied, the rest of the entry kept', () => {
    const [own] = whole.cultivars;
    const { garden, changes } = restoreGarden({ ...whole, cultivars: [{ ...own, packetHours: 140 }] });
    expect(garden.cultivars[0]).toEqual({ ...own, packetHours: null });
    expect(changes).toEqual([{ code: 'emptied', path: 'cultivars[0].packetHours', found: '140' }]);
  });

  test('a place without its point, and what is no entry at all, are left out', () => {
    const { garden, changes } = restoreGarden({ ...whole, places: [{ name: 'somewhere' }, 'there'] });
    expect(garden.places).toEqual([]);
    expect(changes.map(({ code, path }) => `${code} ${path}`)).toEqual([
      'entry-dropped places[0]',
      'entry-dropped places[1]',
    ]);
  });

  test('two onions with one id get two', () => {
    const [own] = whole.cultivars;
    const { garden, changes } = restoreGarden({ ...whole, cultivars: [own, own] });
    expect(garden.cultivars.map(({ id }) => id)).toEqual(['tin', 'cultivars-2']);
    expect(changes).toHaveLength(1);
  });

  test('an id that another entry has of its own is given to none', () => {
    const plantings = [{ name: 'a' }, { name: 'b' }, { id: 'plantings-1', name: 'c' }];
    const { garden } = restoreGarden({ ...whole, plantings });
    expect(garden.plantings.map(({ id }) => id)).toEqual(['plantings-2', 'plantings-3', 'plantings-1']);
  });

  test('ids are given by whoever is asked to make them', () => {
    let made = 0;
    const { garden } = restoreGarden(
      { ...whole, plantings: [{ name: 'a' }, { name: 'b' }] },
      () => `made-${++made}`,
    );
    expect(garden.plantings.map(({ id }) => id)).toEqual(['made-1', 'made-2']);
  });

  test.each([
    ['startDate', '2027-02-30'],
    ['startDate', 20_819],
    ['plantOutDate', '10 April'],
    ['start', 'dibbed'],
    ['cover', 'glass'],
    ['soil', 'peat'],
    ['rowDistanceCm', 400],
    ['plants', '120'],
    ['nurseryTempC', -3],
    ['cultivar', ' '],
  ])('of a planting, %s %j is emptied and the rest kept', (field, value) => {
    const [planting] = whole.plantings;
    const { garden, changes } = restoreGarden({ ...whole, plantings: [{ ...planting, [field]: value }] });
    expect(garden.plantings[0]).toEqual({ ...planting, [field]: null });
    expect(changes).toEqual([{ code: 'emptied', path: `plantings[0].${field}`, found: String(value) }]);
  });

  test('a planting of which nothing is said stays, with all of it open', () => {
    const { garden, changes } = restoreGarden({ ...whole, plantings: [{ name: 'something' }] });
    expect(garden.plantings[0]).toMatchObject({ name: 'something', start: null, startDate: null });
    expect(changes.map(({ code }) => code)).toEqual(['id-given']);
  });
});

describe('a list too long', () => {
  const list = (length: number) => ({
    schema: gardenSchemaName,
    plantings: Array.from({ length }, () => ({})),
  });

  test('is told with its length and the most there may be', () => {
    expect(longList(list(gardenEntries.plantings))).toBeNull();
    const count = gardenEntries.plantings + 1;
    expect(longList(list(count))).toEqual({ list: 'plantings', count, most: gardenEntries.plantings });
    for (const none of [null, 7, [], {}, { places: 'x' }]) expect(longList(none)).toBeNull();
  });
});

test('ids that stand in the way of those given are stepped over once, not once an entry', () => {
  // the first half has the very ids that the doubled ones of the second half would be given
  const hostile = (half: number) => ({
    schema: gardenSchemaName,
    plantings: Array.from({ length: 2 * half }, (_, at) => ({
      name: 'x',
      id: at < half ? `plantings-${half + at + 1}` : 'doubled',
    })),
  });
  const { garden } = restoreGarden(hostile(50));
  expect(new Set(garden.plantings.map(({ id }) => id)).size).toBe(100);
  const quickestMs = (half: number) => {
    const found = hostile(half);
    const times = Array.from({ length: 5 }, () => {
      const from = performance.now();
      restoreGarden(found);
      return performance.now() - from;
    });
    return Math.min(...times);
  };
  quickestMs(2_000);
  // eight times as many: 64 times as long, were each looked up among all
  expect(quickestMs(16_000) / quickestMs(2_000)).toBeLessThan(24);
});

/** As JSON.parse gives it: lists in lists. */
function nested(levels: number, make: (within: unknown) => unknown): unknown {
  let value: unknown = 1;
  for (let level = 0; level < levels; level++) value = make(value);
  return value;
}

describe('what is nested without end', () => {
  test.each([
    ['lists', (within: unknown) => [within]],
    ['records', (within: unknown) => ({ a: within })],
    ['records of a long name', (within: unknown) => ({ ['a'.repeat(100)]: within })],
    ['empty names', (within: unknown) => ({ '': within })],
  ])('%s is told cut short', (_, make) => {
    const deep = nested(100_000, make);
    for (const found of [
      deep,
      { schema: deep },
      { plantings: deep },
      { plantings: [deep, { start: deep, id: deep }] },
    ]) {
      const { changes } = restoreGarden(found);
      for (const change of changes) expect(change.found.length).toBeLessThanOrEqual(41);
    }
  });

  test('what was found is told as JSON has it', () => {
    fc.assert(
      fc.property(fc.jsonValue(), (value) => {
        fc.pre(value !== null);
        const { changes } = restoreGarden({ ...whole, plantings: [{ ...whole.plantings[0], start: value }] });
        const text = typeof value === 'string' ? value : JSON.stringify(value);
        expect(changes[0]?.found).toBe(text.length > 40 ? `${text.slice(0, 40)}…` : text);
      }),
      { seed: 20270503, numRuns: 300 },
    );
  });
});
