import {
  emptyGarden,
  type Garden,
  type GardenBed,
  planFields,
  restoreGarden,
  soilTextures,
} from '@neckfall/engine';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { nothingAsked } from '../../src/address/address.ts';
import type { Asked } from '../../src/address/address-form.ts';
import { askedOf, isAskedFor } from '../../src/garden/asked-of.ts';
import { bedAsked, bedsAt, intoBed } from '../../src/garden/bed-asked.ts';
import { withPlan } from '../../src/garden/planting-of.ts';

const at = { latitudeDeg: 52.08, longitudeDeg: -3.13 };
const bank = {
  ...at,
  id: 'bank',
  name: 'Pencarreg Bank',
  elevationM: null,
  sunHours: null,
  frostHollow: null,
};

function gardenWith(bed: object, more: object = {}): Garden {
  const { garden, changes } = restoreGarden({
    ...emptyGarden(),
    places: [bank],
    beds: [{ id: 'long', name: 'The long bed', placeId: 'bank', alliumYears: [], ...bed }],
    ...more,
  });
  expect(changes).toEqual([]);
  return garden;
}

const plan: Asked = { ...nothingAsked, at, name: bank.name, class: 'long', start: 'sets', date: 21_000 };
const keepOf = (asked: Asked) => ({
  asked,
  plan: { start: asked.start!, startDay: asked.date!, plantOutDay: null },
  class: asked.class,
  placeName: bank.name,
  name: 'A crop',
});
const into = (garden: Garden, asked: Asked, to: GardenBed | null): Asked => ({
  ...asked,
  ...intoBed(garden, asked, bedAsked(garden, asked), to),
});

const orNull = <Value>(value: fc.Arbitrary<Value>) => fc.option(value, { nil: null });
const ofBed = fc.record({
  soil: orNull(fc.constantFrom(...soilTextures)),
  cover: orNull(fc.constantFrom(...planFields.cover.words)),
  water: orNull(fc.constantFrom(...planFields.water.words)),
  sunHours: orNull(fc.integer({ min: 0, max: 240 }).map((tenths) => tenths / 10)),
});
const changed: fc.Arbitrary<Partial<Asked>> = fc.record(
  {
    soil: orNull(fc.constantFrom(...soilTextures)),
    cover: orNull(fc.constantFrom('fleece', 'tunnel')),
    water: orNull(fc.constant('rain' as const)),
  },
  { requiredKeys: [] },
);

describe('a plan kept in a bed', () => {
  test('comes back as it was asked, whatever the bed says and whatever was changed beside it', () => {
    fc.assert(
      fc.property(ofBed, changed, (bed, changes) => {
        const garden = gardenWith(bed);
        const asked = { ...into(garden, plan, garden.beds[0]), ...changes };
        const kept = withPlan(garden, null, keepOf(asked));
        expect(kept.garden.places).toEqual(garden.places);
        const planting = kept.garden.plantings[0];
        expect(planting).toMatchObject({ bedId: 'long', placeId: 'bank' });
        const back = { ...nothingAsked, ...askedOf(kept.garden, planting) };
        // an address may say the usual soil or leave it out
        const soil = asked.soil === 'loam' ? null : asked.soil;
        expect(back).toEqual({ ...asked, soil, planting: planting.id });
        const again = withPlan(kept.garden, planting.id, keepOf(back));
        expect(again.garden).toEqual(kept.garden);
        expect(isAskedFor(kept.garden, planting, { ...back, today: 21_000 })).toBe(true);
      }),
      { seed: 20270220, numRuns: 200 },
    );
  });

  test('says nothing that its bed says, so that a later change of the bed holds', () => {
    const garden = gardenWith({ soil: 'clay', water: 'rain', cover: 'fleece', sunHours: 8 });
    const kept = withPlan(garden, null, keepOf(into(garden, plan, garden.beds[0]))).garden;
    expect(kept.plantings[0]).toMatchObject({ soil: null, water: null, cover: null });
    const later = { ...kept, beds: [{ ...kept.beds[0], soil: 'sand' as const, sunHours: 6 }] };
    expect(askedOf(later, later.plantings[0])).toMatchObject({ soil: 'sand', sun: 6, water: 'rain' });
  });

  test('says the usual where its bed says otherwise', () => {
    const garden = gardenWith({ soil: 'clay', water: 'rain', cover: 'fleece' });
    const asked = { ...into(garden, plan, garden.beds[0]), soil: null, water: null, cover: null };
    const [planting] = withPlan(garden, null, keepOf(asked)).garden.plantings;
    expect(planting).toMatchObject({ soil: 'loam', water: 'watered', cover: 'none' });
  });

  test('is in the place of the bed, whose sun makes no place of its own', () => {
    const garden = gardenWith({ sunHours: 6 }, { places: [{ ...bank, sunHours: 10 }] });
    const asked = into(garden, { ...plan, sun: 10 }, garden.beds[0]);
    expect(asked.sun).toBe(6);
    const kept = withPlan(garden, null, keepOf(asked)).garden;
    expect(kept.places).toHaveLength(1);
    expect(kept.plantings[0]).toMatchObject({ placeId: 'bank', bedId: 'long' });
    expect(into(kept, asked, null)).toMatchObject({ bed: null, sun: 10 });
  });

  test('lies in it no longer once other sun is asked for than the bed has', () => {
    const garden = gardenWith({ sunHours: 6 });
    expect(bedAsked(garden, { bed: 'long', sun: 9 })).toBeNull();
    const asked = { ...into(garden, plan, garden.beds[0]), sun: 9 };
    const kept = withPlan(garden, null, keepOf(asked)).garden;
    expect(kept.plantings[0].bedId).toBeNull();
    expect(kept.places).toHaveLength(2);
  });
});

describe('choosing a bed', () => {
  const garden = gardenWith(
    { soil: 'clay', cover: 'fleece', sunHours: 8 },
    {
      beds: [
        { id: 'a', name: 'A', placeId: 'bank', soil: 'clay', cover: 'fleece', sunHours: 8, alliumYears: [] },
        { id: 'b', name: 'B', placeId: 'bank', water: 'rain', alliumYears: [] },
        { id: 'c', name: 'C', placeId: 'elsewhere', alliumYears: [] },
      ],
    },
  );
  const [a, b] = garden.beds;

  test('offers those of the place', () => {
    expect(bedsAt(garden, at).map(({ id }) => id)).toEqual(['a', 'b']);
    expect(bedsAt(garden, { latitudeDeg: 0, longitudeDeg: 0 })).toEqual([]);
  });

  test('takes what the bed says, and nothing of the last one along', () => {
    const inA = into(garden, plan, a);
    expect(inA).toMatchObject({ bed: 'a', soil: 'clay', cover: 'fleece', sun: 8, water: null });
    expect(into(garden, inA, b)).toMatchObject({
      bed: 'b',
      soil: null,
      cover: null,
      sun: null,
      water: 'rain',
    });
    expect(into(garden, inA, null)).toEqual({ ...plan, bed: null });
  });

  test('leaves what was said beside the bed', () => {
    const tunnel = { ...into(garden, plan, a), cover: 'tunnel' as const };
    expect(into(garden, tunnel, b).cover).toBe('tunnel');
  });
});
