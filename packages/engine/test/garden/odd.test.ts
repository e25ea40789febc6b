import { describe, expect, test } from 'vitest';
import { parseDay } from '../../src/calendar/index.ts';
import {
  type GardenPlanting,
  gardenSchemaName,
  type Observation,
  odd,
  restoreGarden,
} from '../../src/garden/index.ts';

const { garden } = restoreGarden({
  schema: gardenSchemaName,
  plantings: [
    {
      id: 'a',
      name: 'The long bed',
      start: 'sets',
      startDate: '2027-03-20',
      plants: 100,
      rowDistanceCm: 30,
      plantDistanceCm: 10,
    },
  ],
});
const [planting] = garden.plantings;
const today = parseDay('2027-08-30')!;
let count = 0;
const on = (date: string, seen: Partial<Observation>): Observation => ({
  id: `o${++count}`,
  plantingId: 'a',
  date,
  ...seen,
});
const asked = (
  observation: Observation,
  others: Observation[] = [],
  of: Partial<GardenPlanting> = {},
  now = today,
) => odd(observation, { ...planting, ...of }, others, now);
const codes = (...args: Parameters<typeof asked>) => asked(...args).map(({ code }) => code);

test('a season as it should be asks nothing', () => {
  const season = [
    on('2027-04-20', { leavesGreen: 3, lookedAt: 10 }),
    on('2027-05-10', { leavesGreen: 5.5, wateredLitres: 60, fedProduct: '10-4-8', fedG: 150 }),
    on('2027-06-10', { leavesGreen: 9, neckMm: 14, bulbMm: 16, standCount: 96, floweringCount: 2 }),
    on('2027-07-10', { leavesGreen: 8, neckMm: 12, bulbMm: 55, topsOverShare: 0 }),
    on('2027-08-01', { leavesGreen: 4, topsOverShare: 0.6 }),
    on('2027-08-10', { leavesGreen: 0, topsOverShare: 1, lifted: true }),
    on('2027-08-25', { weighedKg: 9, bulbCount: 94 }),
  ];
  for (const [at, entry] of season.entries()) expect(asked(entry, season.slice(0, at + 1))).toEqual([]);
  // late entries of earlier days
  for (const entry of season) expect(asked(entry, season)).toEqual([]);
});

describe('it is asked', () => {
  test('whether so many leaves are those of a plant', () => {
    // 40 days on from sets: 6 + 40 / 4
    expect(asked(on('2027-04-29', { leavesGreen: 17 }))).toEqual([
      { code: 'leaves-many', values: { leaves: 17, most: 16 } },
    ]);
    expect(codes(on('2027-04-29', { leavesGreen: 16 }))).toEqual([]);
    // from seed 1 + 40 / 4, from plants as they are bought 5 + 40 / 4; where nothing is said, as from sets
    for (const [start, most] of [
      ['direct-seed', 11],
      ['raised-seedlings', 11],
      ['bought-transplants', 15],
      [null, 16],
    ] as const) {
      expect(codes(on('2027-04-29', { leavesGreen: most }), [], { start })).toEqual([]);
      expect(codes(on('2027-04-29', { leavesGreen: most + 1 }), [], { start })).toEqual(['leaves-many']);
    }
    expect(codes(on('2027-04-29', { leavesGreen: 19 }), [], { startDate: null })).toEqual(['leaves-many']);
  });

  test('whether so many withered since the last count', () => {
    const before = [on('2027-06-01', { leavesGreen: 5 }), on('2027-06-10', { leavesGreen: 9 })];
    const now = on('2027-06-20', { leavesGreen: 5.5 });
    const beforeDay = parseDay('2027-06-10');
    expect(asked(now, before)).toEqual([
      { code: 'leaves-fewer', values: { leaves: 5.5, before: 9, beforeDay } },
    ]);
    expect(codes({ ...now, leavesGreen: 6 }, before)).toEqual([]);
    expect(codes({ ...now, topsOverShare: 0.1 }, before)).toEqual([]);
    // what was counted later says nothing of what came before
    expect(codes(on('2027-05-20', { leavesGreen: 4 }), before)).toEqual([]);
  });

  test('whether neck and bulb were exchanged, once a bulb is there', () => {
    expect(codes(on('2027-05-01', { neckMm: 12, bulbMm: 11 }))).toEqual([]);
    expect(codes(on('2027-05-01', { neckMm: 40, bulbMm: 26 }))).toEqual(['neck-wide']);
    expect(codes(on('2027-08-01', { neckMm: 12, bulbMm: 11 }))).toEqual(['neck-wide']);
  });

  test('whether tops rose again', () => {
    const before = [on('2027-08-01', { topsOverShare: 0.6 })];
    expect(codes(on('2027-08-05', { topsOverShare: 0.5 }), before)).toEqual(['tops-less']);
    expect(codes(on('2027-07-25', { topsOverShare: 0.5 }), before)).toEqual([]);
    // of one day, each is held against the other
    expect(codes(on('2027-08-01', { topsOverShare: 0.5 }), before)).toEqual(['tops-less']);
  });

  test('where more plants flower than stand, and more bulbs are there than plants were', () => {
    const before = [on('2027-06-01', { standCount: 80 })];
    expect(asked(on('2027-07-01', { floweringCount: 81 }), before)).toEqual([
      { code: 'flowering-many', values: { flowering: 81, standing: 80 } },
    ]);
    expect(codes(on('2027-07-01', { floweringCount: 81 }))).toEqual([]);
    expect(asked(on('2027-08-20', { bulbCount: 101 }), before)).toEqual([
      { code: 'bulbs-many', values: { bulbs: 101, plants: 100 } },
    ]);
    const store = { soundCount: 60, sproutedCount: 30, rottenCount: 11 };
    expect(codes(on('2027-08-20', store))).toEqual(['bulbs-many']);
    expect(codes(on('2027-08-20', store), [], { plants: null })).toEqual([]);
  });

  test('where more necks are thick than bulbs were counted', () => {
    expect(codes(on('2027-08-20', { bulbCount: 20, thickNeckCount: 20 }))).toEqual([]);
    expect(codes(on('2027-08-20', { thickNeckCount: 21 }))).toEqual([]);
    expect(asked(on('2027-08-20', { bulbCount: 20, thickNeckCount: 21 }))).toEqual([
      { code: 'thick-many', values: { thick: 21, bulbs: 20 } },
    ]);
  });

  test('where water and feed are too much for the ground that is covered', () => {
    // 100 plants at 30 by 10 cm: 3 m²
    expect(codes(on('2027-06-01', { wateredLitres: 150 }))).toEqual([]);
    const morning = on('2027-06-01', { wateredLitres: 100 });
    expect(asked(on('2027-06-01', { wateredLitres: 51 }), [morning])).toEqual([
      { code: 'water-much', values: { litres: 151, areaM2: 3 } },
    ]);
    expect(codes(on('2027-06-01', { fedG: 300 }))).toEqual([]);
    expect(codes(on('2027-06-01', { fedG: 301 }))).toEqual(['feed-much']);
    expect(codes(on('2027-06-01', { fedG: 9000, wateredLitres: 9000 }), [], { plants: null })).toEqual([]);
  });

  test('whether the day is right', () => {
    expect(codes(on('2027-03-19', { note: 'dug' }))).toEqual(['before-start']);
    expect(codes(on('2029-03-20', { note: 'x' }), [], {}, today + 1000)).toEqual([]);
    expect(codes(on('2029-03-21', { note: 'x' }), [], {}, today + 1000)).toEqual(['long-after']);
    expect(codes(on('2027-08-31', { note: 'x' }))).toEqual(['in-future']);
    expect(codes(on('2027-08-30', { note: 'x' }), [], { startDate: null })).toEqual([]);
  });

  test('of the observation as it is changed, not against what it was before', () => {
    const was = on('2027-06-10', { leavesGreen: 9 });
    expect(codes({ ...was, leavesGreen: 4 }, [was])).toEqual([]);
  });
});
