import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  bedOf,
  emptyGarden,
  type GardenBed,
  longList,
  plantingInBed,
  restoreGarden,
} from '../../src/garden/index.ts';
import { gardenEntries } from '../../src/limits/index.ts';

const bare = (
  restoreGarden({ ...emptyGarden(), beds: [{ id: 'a', name: 'A' }] }).garden as { beds: GardenBed[] }
).beds[0];
const restored = (entry: object) => restoreGarden({ ...emptyGarden(), ...entry });

const value = fc.oneof(
  fc.jsonValue(),
  fc.constantFrom('clay', 'drip', 'rich', 'rain', 'fleece', 2024, 6.5, true, [2024], [2024, 1.5, 'x']),
);
const entries = (fields: readonly string[]) =>
  fc.array(fc.record(Object.fromEntries(fields.map((field) => [field, value])), { requiredKeys: [] }), {
    maxLength: 4,
  });

test('beds and marks of work restored twice are restored once, whatever was in them', () => {
  const marks = entries(['id', 'plantingId', 'job', 'state', 'date', 'until', 'by']).map((list) =>
    list.map((mark, at) =>
      at % 2 === 0 ? { ...mark, job: 'weed', date: '2027-05-20', state: 'done' } : mark,
    ),
  );
  fc.assert(
    fc.property(entries([...Object.keys(bare), 'edgedBy']), marks, (beds, jobs) => {
      const { garden, changes } = restored({ beds, jobs });
      expect(restoreGarden(garden)).toEqual({ garden, changes: [] });
      for (const bed of garden.beds) expect(bed.name).not.toBe('');
      const said = (list: readonly object[], field: string) =>
        list.flatMap((one) => (field in one ? [one] : []));
      // what this version does not know stays
      expect(said(garden.beds, 'edgedBy')).toHaveLength(said(beds, 'edgedBy').length);
      expect(changes.every(({ path }) => /^(beds|jobs)\[\d+\]/.test(path))).toBe(true);
    }),
    { seed: 20270503, numRuns: 300 },
  );
});

describe('of a bed', () => {
  test.each([
    ['lengthM', 0],
    ['widthM', '1.2'],
    ['soil', 'peat'],
    ['cover', 'glass'],
    ['watering', 'rain'],
    ['flowLPerH', -5],
    ['waterSaltDsPerM', 40],
    ['fertility', 'fair'],
    ['compostKgPerM2', 90],
    ['afterLegume', 'yes'],
    ['soilPh', 14],
    ['feedProduct', ' '],
    ['whiteRot', 0],
  ])('%s %j is emptied and the rest kept', (field, found) => {
    const bed = { ...bare, name: 'The long bed', soil: 'clay', lengthM: 6 };
    const { garden, changes } = restored({ beds: [{ ...bed, [field]: found }] });
    expect(garden.beds[0]).toEqual({ ...bed, [field]: null });
    expect(changes).toEqual([{ code: 'emptied', path: `beds[0].${field}`, found: String(found) }]);
  });

  test('years that are none go, those that are stay', () => {
    const { garden, changes } = restored({
      beds: [{ ...bare, alliumYears: [2024, 2021.5, '2020', 20, 2022] }],
    });
    expect(garden.beds[0].alliumYears).toEqual([2024, 2022]);
    expect(changes.map(({ code, path }) => `${code} ${path}`)).toEqual(['emptied beds[0].alliumYears']);
  });

  test('there may be many, and no more', () => {
    const list = (count: number) => ({ beds: Array(count).fill({}) });
    expect(longList(list(gardenEntries.beds))).toBeNull();
    expect(longList(list(gardenEntries.beds + 1))?.list).toBe('beds');
    expect(longList({ jobs: Array(gardenEntries.jobs + 1).fill({}) })?.list).toBe('jobs');
  });
});

describe('a mark of work', () => {
  const mark = {
    id: 'j',
    plantingId: 'p',
    job: 'weed',
    state: 'put-off',
    date: '2027-05-20',
    until: '2027-05-27',
  };

  test.each([
    ['no work', { job: ' ' }],
    ['no day', { date: '20 May' }],
    ['no state', { state: 'half-done' }],
    ['put off to no day', { until: undefined }],
    ['a work of a name without end', { job: 'w'.repeat(61) }],
  ])('that names %s is left out', (_, change) => {
    const { garden, changes } = restored({ jobs: [{ ...mark, ...change }] });
    expect(garden.jobs).toEqual([]);
    expect(changes.map(({ code }) => code)).toEqual(['entry-dropped']);
  });

  test('that was done is put off to no day', () => {
    const { garden, changes } = restored({ jobs: [{ ...mark, state: 'done' }] });
    const { until: _, ...done } = mark;
    expect(garden.jobs).toEqual([{ ...done, state: 'done' }]);
    expect(changes.map(({ path }) => path)).toEqual(['jobs[0].until']);
  });
});

describe('a planting in a bed', () => {
  const { garden } = restored({
    beds: [{ ...bare, id: 'long', name: 'The long bed', soil: 'clay', cover: 'fleece', water: 'rain' }],
    plantings: [
      { id: 'in', name: 'In', bedId: 'long', cover: 'none' },
      { id: 'gone', name: 'Gone', bedId: 'dug up' },
      { id: 'free', name: 'Free' },
    ],
  });
  const [inBed, gone, free] = garden.plantings;

  test('says of itself what it says, and what it leaves open as its bed does', () => {
    expect(plantingInBed(garden, inBed)).toEqual({ ...inBed, soil: 'clay', cover: 'none', water: 'rain' });
  });

  test('whose bed is not there lies in none', () => {
    for (const planting of [gone, free]) {
      expect(bedOf(garden, planting)).toBeNull();
      expect(plantingInBed(garden, planting)).toBe(planting);
    }
  });
});
