import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fillBed, plantsPerM2, standOf, usualSpacing } from '../../src/bed/index.ts';

const single = (rowCm: number, plantCm: number) => ({ rowCm, plantCm, perStation: 1 });

describe('plants to the square metre', () => {
  // as handbooks print distances, with the plants that they come to
  test.each([
    ['Iowa State Univ. Extension 2024, wide', single(38, 15), 18],
    ['Iowa State Univ. Extension 2024, close', single(30, 10), 33],
    ['Univ. of Minnesota Extension, wide', single(40, 10), 25],
    ['Univ. of Minnesota Extension, close', single(30, 7.5), 44],
    ['Limpopo Dept of Agriculture, wide', single(25, 10), 40],
    ['Limpopo Dept of Agriculture, close', single(20, 7), 71],
    ['Iowa State Univ. Extension 2024, clumps of four', { rowCm: 30, plantCm: 30, perStation: 4 }, 44],
  ])('%s', (_, spacing, plants) => {
    expect(Math.round(plantsPerM2(spacing))).toBe(plants);
  });

  test('blocks of several plants, 10 to 12 of them to the square metre, come to 55 to 65 plants', () => {
    // memory: UK multi-seeded blocks, five to six plants each, 30 × 30 cm apart
    const blocks = (perStation: number) => plantsPerM2({ rowCm: 30, plantCm: 30, perStation });
    expect(blocks(1)).toBeGreaterThan(10);
    expect(blocks(1)).toBeLessThan(12);
    expect(blocks(5)).toBeGreaterThanOrEqual(55);
    expect(blocks(6)).toBeLessThan(67);
  });
});

test('so many plants take as much ground as their number to the square metre says, in as many places as hold them', () => {
  const spacings = fc.record({
    rowCm: fc.double({ min: 10, max: 60, noNaN: true }),
    plantCm: fc.double({ min: 2.5, max: 30, noNaN: true }),
    perStation: fc.integer({ min: 1, max: 12 }),
  });
  fc.assert(
    fc.property(spacings, fc.integer({ min: 1, max: 100_000 }), (spacing, plants) => {
      const stand = standOf(plants, spacing);
      expect(stand.areaM2 * plantsPerM2(spacing)).toBeCloseTo(plants, 6);
      expect(stand.stations * spacing.perStation).toBeGreaterThanOrEqual(plants);
      expect((stand.stations - 1) * spacing.perStation).toBeLessThan(plants);
    }),
    { seed: 20270503, numRuns: 200 },
  );
});

describe('a full bed', () => {
  test.each([
    ['rows along the longer side', 6, 1.2, single(30, 10), { rows: 4, stationsPerRow: 60, plants: 240 }],
    ['whichever is said first', 1.2, 6, single(30, 10), { rows: 4, stationsPerRow: 60, plants: 240 }],
    ['narrower than a row: one row', 2, 0.2, single(30, 10), { rows: 1, stationsPerRow: 20, plants: 20 }],
    [
      'clumps of four',
      3,
      0.9,
      { rowCm: 30, plantCm: 30, perStation: 4 },
      { rows: 3, stationsPerRow: 10, plants: 120 },
    ],
  ])('%s', (_, length, width, spacing, full) => {
    expect(fillBed(length, width, spacing)).toEqual(full);
  });

  test('of usual distances has no more plants than its ground has room for', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.3, max: 50, noNaN: true }),
        fc.double({ min: 0.3, max: 50, noNaN: true }),
        (length, width) => {
          const { plants } = fillBed(length, width, usualSpacing);
          expect(plants).toBeLessThanOrEqual(length * width * plantsPerM2(usualSpacing) + 1e-6);
        },
      ),
      { seed: 20270503, numRuns: 200 },
    );
  });
});
