import { describe, expect, test } from 'vitest';
import { alliumsBefore, restoreGarden } from '../../src/garden/index.ts';

const crop = { id: 'now', name: 'Now', bedId: 'long', startDate: '2027-03-20' };

function before(bed: object, others: object[] = [], observations: object[] = [], planting: object = crop) {
  const { garden } = restoreGarden({
    schema: 'neckfall/garden@1',
    beds: [{ id: 'long', name: 'The long bed', ...bed }],
    plantings: [planting, ...others],
    observations,
  });
  return alliumsBefore(garden, garden.plantings[0]);
}

describe('years since an onion, garlic or leek stood in a bed', () => {
  test.each([
    ['nothing known', [], null, 'clear'],
    ['last year: downy mildew', [2020, 2026], 1, 'short'],
    ['two years ago', [2025], 2, 'short'],
    ['three years ago: long enough for downy mildew, not for pink root', [2024], 3, 'roots'],
    ['five years ago', [2022], 5, 'roots'],
    ['six years ago', [2021], 6, 'clear'],
    ['the same year', [2027], 0, 'short'],
    ['a later year tells nothing of this one', [2029], null, 'clear'],
  ] as const)('%s', (_, alliumYears, yearsAgo, finding) => {
    const found = before({ alliumYears });
    expect(found?.last?.yearsAgo ?? null).toBe(yearsAgo);
    expect(found?.finding).toBe(finding);
  });

  test('plantings of the garden count by the day they were lifted, else by a usual season', () => {
    const other = { id: 'old', name: 'Old', bedId: 'long', startDate: '2024-09-10' };
    expect(before({}, [other])?.last).toEqual({ year: 2025, yearsAgo: 2 });
    const lifted = { plantingId: 'old', date: '2025-06-20', lifted: true };
    expect(before({}, [other], [lifted])?.last).toEqual({ year: 2025, yearsAgo: 2 });
    const early = { ...lifted, date: '2024-12-01' };
    expect(before({}, [other], [early])?.last).toEqual({ year: 2024, yearsAgo: 3 });
  });

  test('what stands beside it, lies elsewhere or comes later has not stood before it', () => {
    const beside = { id: 'b', name: 'B', bedId: 'long', startDate: '2027-02-01' };
    const elsewhere = { id: 'c', name: 'C', bedId: 'other', startDate: '2026-03-01' };
    const later = { id: 'd', name: 'D', bedId: 'long', startDate: '2028-03-01' };
    expect(before({}, [beside, elsewhere, later])?.last).toBeNull();
  });

  test('trays do not stand in the bed: the day of planting out counts', () => {
    const raised = { ...crop, startDate: '2026-12-20', plantOutDate: '2027-03-20' };
    expect(before({ alliumYears: [2024] }, [], [], raised)?.last).toEqual({ year: 2024, yearsAgo: 3 });
  });
});

test('white rot once seen is never out of a bed', () => {
  expect(before({ alliumYears: [1999], whiteRot: true })).toMatchObject({
    whiteRot: true,
    finding: 'white-rot',
  });
  expect(before({ whiteRot: false })?.finding).toBe('clear');
});

test('without a bed, or without a day, there is nothing to tell', () => {
  expect(before({}, [], [], { ...crop, bedId: null })).toBeNull();
  expect(before({}, [], [], { ...crop, bedId: 'gone' })).toBeNull();
  expect(before({}, [], [], { ...crop, startDate: null })).toBeNull();
});
