import { readFileSync } from 'node:fs';
import { emptyGarden, type Garden, restoreGarden, soilTextures, startMethods } from '@neckfall/engine';
import { Ajv } from 'ajv';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { nothingAsked } from '../../src/address/address.ts';
import type { Asked } from '../../src/address/address-form.ts';
import { askedOf, isAskedFor, plantingAsked } from '../../src/garden/asked-of.ts';
import { findOwn } from '../../src/garden/own-onion.ts';
import { withPlan } from '../../src/garden/planting-of.ts';

const isAsPublished = new Ajv({ strict: true, allErrors: true }).compile(
  JSON.parse(readFileSync(new URL('../../../cli/schemas/garden@1.json', import.meta.url), 'utf8')),
);

const optional = <Value>(value: fc.Arbitrary<Value>) => fc.option(value, { nil: null });
const day = fc.integer({ min: 20_000, max: 30_000 });

/** All that a plan of the Season page may ask. */
const asked: fc.Arbitrary<Asked> = fc
  .record({
    at: fc.record({
      latitudeDeg: fc.integer({ min: -600_000, max: 720_000 }).map((d) => d / 1e4),
      longitudeDeg: fc.integer({ min: -1_800_000, max: 1_800_000 }).map((d) => d / 1e4),
    }),
    name: fc.constantFrom('Pencarreg Bank', 'The <b>wall</b>'),
    elevation: optional(fc.integer({ min: -430, max: 6000 })),
    sun: optional(fc.integer({ min: 0, max: 240 }).map((tenths) => tenths / 10)),
    hollow: optional(fc.constant(true as const)),
    cover: optional(fc.constantFrom('fleece', 'tunnel')),
    water: optional(fc.constant('rain' as const)),
    soil: optional(fc.constantFrom(...soilTextures)),
    class: fc.constantFrom('short', 'intermediate', 'long'),
    packetHours: optional(fc.integer({ min: 36, max: 72 }).map((quarters) => quarters / 4)),
    packetDays: optional(fc.integer({ min: 40, max: 400 })),
    start: fc.constantFrom(...startMethods),
    date: day,
    plantOut: optional(day),
    rowDistance: optional(fc.integer({ min: 10, max: 60 })),
    plantDistance: optional(fc.integer({ min: 3, max: 30 })),
    perStation: optional(fc.integer({ min: 1, max: 12 })),
    plants: optional(fc.integer({ min: 1, max: 9999 })),
    setSize: optional(fc.integer({ min: 5, max: 40 })),
    setStore: optional(fc.constant('warm' as const)),
    nurseryTemp: optional(fc.integer({ min: 2, max: 35 })),
    lampHours: optional(fc.integer({ min: 0, max: 24 })),
  })
  .map((plan) => ({ ...nothingAsked, ...plan }) as Asked);

const keepOf = (plan: Asked) => ({
  asked: plan,
  plan: { start: plan.start!, startDay: plan.date!, plantOutDay: plan.plantOut },
  class: plan.class,
  placeName: plan.name!,
  name: 'A bed',
});

test('a plan kept in a garden comes back as it was asked', () => {
  fc.assert(
    fc.property(asked, (plan) => {
      const { garden, plantingId } = withPlan(emptyGarden(), null, keepOf(plan));
      const text = JSON.stringify(garden);
      const restored = restoreGarden(JSON.parse(text));
      expect(restored.changes).toEqual([]);
      isAsPublished(JSON.parse(text));
      expect(isAsPublished.errors).toBeNull();
      const planting = restored.garden.plantings.find(({ id }) => id === plantingId)!;
      expect({ ...nothingAsked, ...askedOf(restored.garden, planting) }).toEqual({
        ...plan,
        planting: plantingId,
      });
    }),
    { seed: 20270220, numRuns: 200 },
  );
});

test('a planting that leaves much open is asked for as it is, until more is said', () => {
  const { garden } = restoreGarden({
    schema: 'neckfall/garden@1',
    places: [{ id: 'bank', name: 'Bank', latitudeDeg: 52.083_217, longitudeDeg: -3.131_99 }],
    plantings: [{ id: 'a', name: 'The long bed', placeId: 'bank', class: 'long' }],
  });
  const [planting] = garden.plantings;
  const page = { ...nothingAsked, ...askedOf(garden, planting), today: 21_000 };
  const at = { latitudeDeg: 52.0832, longitudeDeg: -3.132 };
  expect(isAskedFor(garden, planting, { ...page, at })).toBe(true);
  expect(isAskedFor(garden, planting, { ...page, date: 21_000 })).toBe(false);
  expect(isAskedFor(garden, planting, { ...page, plants: 90 })).toBe(false);
});

test('kept again it is the same planting; another goes beside it, in the same place', () => {
  fc.assert(
    fc.property(asked, day, (plan, date) => {
      const first = withPlan(emptyGarden(), null, keepOf(plan));
      const again = withPlan(first.garden, first.plantingId, keepOf({ ...plan, date }));
      expect(again.garden.plantings).toHaveLength(1);
      const beside = withPlan(first.garden, null, keepOf({ ...plan, date }));
      expect(beside.garden.plantings).toHaveLength(2);
      expect(beside.garden.places).toHaveLength(1);
    }),
    { seed: 20270220, numRuns: 50 },
  );
});

test('an onion of the grower’s own keeps its name while its packet is as it was', () => {
  const garden = {
    ...emptyGarden(),
    cultivars: [
      { id: 'tin', name: 'Ines’s  Tin', class: 'long', packetHours: 15, packetDays: null, keepsMonths: null },
    ],
  } as Garden;
  const tin = { cultivar: 'ines’s tin', class: 'long', packetHours: 15 } as const;
  const plan = { ...nothingAsked, at: { latitudeDeg: 52, longitudeDeg: -3 }, name: 'Bank' };
  const chosen = { ...plan, start: 'sets', date: 21_000 } as const;
  const kept = (asked: Partial<Asked>) =>
    withPlan(garden, null, keepOf({ ...chosen, ...asked })).garden.plantings[0];
  const own = { cultivar: 'Ines’s  Tin', class: null, packetHours: null, packetDays: null };
  expect(kept(tin)).toMatchObject(own);
  expect(kept({ cultivar: 'Ines’s Tin' })).toMatchObject(own);
  expect(kept({ ...tin, packetHours: 14 })).toMatchObject({ cultivar: 'Ines’s  Tin', packetHours: 14 });
  expect(kept({ ...tin, cultivar: null })).toMatchObject({ cultivar: null, packetHours: 15 });
  expect(askedOf(garden, kept({ ...tin, packetHours: 14 }))).toMatchObject({ packetHours: 14 });
  expect(askedOf(garden, kept(tin))).toMatchObject({ ...tin, cultivar: 'Ines’s Tin' });
});

const asked0 = { ...nothingAsked, at: { latitudeDeg: 52, longitudeDeg: -3 }, name: 'Bank' };
const aCrop = keepOf({ ...asked0, start: 'sets', date: 21_000 });

test('an id is given once: not again after its planting was removed or taken back', () => {
  const first = withPlan(emptyGarden(), null, aCrop);
  const removed = { ...first.garden, plantings: [] };
  const ids = [removed, emptyGarden(), first.garden].map((from) => withPlan(from, null, aCrop).plantingId);
  expect(new Set([first.plantingId, ...ids]).size).toBe(4);
  for (const id of ids) expect(id.length).toBeLessThanOrEqual(12);
});

test('a planting is found by its id as it is kept, whatever the id', () => {
  const ids = ['q', 'q\u200b', 'q ', 'x'.repeat(121), 'y'.repeat(5000), '\ud800'];
  const { garden } = restoreGarden({ plantings: ids.map((id) => ({ id, name: 'A bed' })) });
  for (const planting of garden.plantings) {
    const link = { ...nothingAsked, ...askedOf(garden, planting) };
    const isSaid = planting.id.length <= 1000 && planting.id !== '\ud800';
    expect(plantingAsked(garden, link)).toBe(isSaid ? planting : undefined);
  }
  expect(plantingAsked(garden, nothingAsked)).toBeUndefined();
});

test('of two onions that look alike, a planting has the one it names', () => {
  const own = [{ name: 'Tin' }, { name: 'Tin\u200b' }, { name: 'tin' }];
  for (const onion of own) expect(findOwn(own, onion.name)).toBe(onion);
  expect(findOwn(own, 'TIN')).toBe(own[0]);
});
