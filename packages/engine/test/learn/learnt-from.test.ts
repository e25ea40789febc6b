import { describe, expect, test } from 'vitest';
import { emptyGarden, type GardenPlanting, restoreGarden } from '../../src/garden/index.ts';
import {
  type Belief,
  believedOf,
  plantingBefore,
  plantingLearntFrom,
  usualBelief,
} from '../../src/learn/index.ts';

function gardenOf(plantings: readonly Partial<GardenPlanting>[]) {
  const named = plantings.map((planting, at) => ({
    id: `p${at}`,
    name: `${at}`,
    placeId: 'a',
    cultivar: 'Tin',
    ...planting,
  }));
  return restoreGarden({ ...emptyGarden(), plantings: named }).garden;
}

/** Ids in the order in which they are learnt from, each with whether something was believed before. */
function learntIn(garden: ReturnType<typeof gardenOf>, of: string) {
  const order: string[] = [];
  const believed = believedOf(
    garden,
    garden.plantings.find(({ id }) => id === of)!,
    (earlier, before): Belief => {
      order.push(`${earlier.id}${before ? '+' : ''}`);
      return usualBelief();
    },
  );
  return { order, believed };
}

describe('a planting that learns from earlier ones', () => {
  test('takes them up from the first to the last', () => {
    const garden = gardenOf([{}, { learntFrom: 'p0' }, { learntFrom: 'p1' }]);
    expect(learntIn(garden, 'p2').order).toEqual(['p0', 'p1+']);
    expect(learntIn(garden, 'p0')).toEqual({ order: [], believed: null });
  });

  test('ends a round where it closes', () => {
    const garden = gardenOf([{ learntFrom: 'p2' }, { learntFrom: 'p0' }, { learntFrom: 'p1' }]);
    expect(learntIn(garden, 'p2').order).toEqual(['p0', 'p1+']);
    expect(learntIn(gardenOf([{ learntFrom: 'p0' }]), 'p0').order).toEqual([]);
    // a round that does not come back to the planting itself
    const aside = gardenOf([{ learntFrom: 'p1' }, { learntFrom: 'p0' }, { learntFrom: 'p1' }]);
    expect(learntIn(aside, 'p2').order).toEqual(['p0', 'p1+']);
  });

  test('learns nothing from another onion, another place or a planting that is gone', () => {
    const garden = gardenOf([
      {},
      { cultivar: 'Pan', learntFrom: 'p0' },
      { placeId: 'b', learntFrom: 'p0' },
      { learntFrom: 'gone' },
      { cultivar: ' tin', learntFrom: 'p0' },
    ]);
    expect(['p1', 'p2', 'p3'].map((id) => learntIn(garden, id).order)).toEqual([[], [], []]);
    expect(learntIn(garden, 'p4').order).toEqual(['p0']);
    // onions without a name are told apart by what their packets say
    const packets = gardenOf(
      [
        { class: 'long' as const },
        { class: 'short' as const, learntFrom: 'p0' },
        { class: 'long' as const, packetDays: 110, learntFrom: 'p0' },
        { class: 'long' as const, learntFrom: 'p0' },
      ].map((planting) => ({ ...planting, cultivar: null })),
    );
    expect(['p1', 'p2', 'p3'].map((id) => learntIn(packets, id).order)).toEqual([[], [], ['p0']]);
  });

  test('looks ten plantings back and no further', () => {
    const garden = gardenOf(
      Array.from({ length: 30 }, (_, at) => (at === 0 ? {} : { learntFrom: `p${at - 1}` })),
    );
    expect(learntIn(garden, 'p29').order).toHaveLength(10);
    expect(learntIn(garden, 'p29').order.at(-1)).toBe('p28+');
  });

  test('goes on without those that tell nothing', () => {
    const garden = gardenOf([{}, { learntFrom: 'p0' }, { learntFrom: 'p1' }]);
    const last = garden.plantings[2];
    const believed = believedOf(garden, last, ({ id }) => (id === 'p0' ? usualBelief() : null));
    expect(believed).toEqual(usualBelief());
  });
});

test('a planting starts from the one it names while that is of the same onion and place', () => {
  const garden = gardenOf([
    { learntFrom: 'p0' },
    { learntFrom: 'p0' },
    { cultivar: 'Pan', learntFrom: 'p0' },
    {},
  ]);
  const from = garden.plantings.map((planting) => plantingLearntFrom(garden, planting)?.id ?? null);
  expect(from).toEqual([null, 'p0', null, null]);
});

test('what a new planting can learn from is the latest of the same onion and place that was started before and looked at', () => {
  const { plantings } = gardenOf([
    { startDate: '2025-03-01' },
    { startDate: '2026-03-01' },
    { startDate: '2027-03-01' },
    { startDate: '2026-05-01', cultivar: 'Pan' },
    {},
  ]);
  const looked = (...ids: string[]) => ({
    plantings,
    observations: ids.map((plantingId) => ({
      id: plantingId,
      plantingId,
      date: '2027-06-01',
      leavesGreen: 5,
    })),
  });
  const all = looked('p0', 'p1', 'p2', 'p3');
  expect(plantingBefore(all, plantings[2])?.id).toBe('p1');
  expect(plantingBefore(all, plantings[0])).toBeNull();
  expect(plantingBefore(all, plantings[4])?.id).toBe('p2');
  expect(plantingBefore(looked('p0'), plantings[2])?.id).toBe('p0');
  expect(plantingBefore(looked(), plantings[2])).toBeNull();
});
