import { describe, expect, test } from 'vitest';
import { standOf, usualSpacing } from '../../src/bed/index.ts';
import { fieldFactor } from '../../src/plant/index.ts';
import { planDefaults } from '../../src/season/index.ts';
import { type Between, densityOf, neededFor, type SeedAge, spacingOf } from '../../src/stand/index.ts';

const single = (rowCm: number, plantCm: number) => ({ rowCm, plantCm, perStation: 1 });
const poundKg = 0.45359237;
const hundredFeetM = 30.48;

type Start = Parameters<typeof neededFor>[2]['start'];

function need(
  plants: number,
  start: Start,
  { spacing = usualSpacing, seedAge = null as SeedAge | null, setSizeMm = 16, share = 0 } = {},
) {
  const emergedShare = share || (start === 'raised-seedlings' ? fieldFactor.tray : fieldFactor.bed);
  return neededFor(standOf(plants, spacing), spacing, { start, seedAge, setSizeMm, emergedShare });
}

const overlap = ([a, b]: Between, [c, d]: Between) => a <= d && c <= b;

describe('sets', () => {
  test('for 100 feet of row are two to three pounds, as the University of Illinois Extension has it', () => {
    // 3 to 4 inches apart, up to the dime that Illinois calls the largest for bulbs
    for (const apartCm of [7.62, 10.16]) {
      const needed = need(Math.round((100 * hundredFeetM) / apartCm), 'sets', { setSizeMm: 17 });
      if (needed?.from !== 'sets') throw new Error('no sets');
      expect(overlap(needed.kg, [2 * poundKg, 3 * poundKg])).toBe(true);
    }
  });

  test('weigh two to three grams each at their usual size (Assiut 2007–09)', () => {
    expect(need(1000, 'sets')).toEqual({
      from: 'sets',
      sets: 1000,
      kg: [expect.closeTo(2.05, 1), expect.closeTo(3.07, 1)],
    });
  });

  test('are the heavier the larger', () => {
    const kg = [10, 16, 22].map((setSizeMm) => {
      const needed = need(100, 'sets', { setSizeMm });
      return needed?.from === 'sets' ? needed.kg[0] : 0;
    });
    expect(kg[0]).toBeLessThan(kg[1] / 2);
    expect(kg[2]).toBeGreaterThan(kg[1] * 2);
  });
});

describe('seed', () => {
  test('of 7 g sown on 30 m of row leaves a row to be thinned, as the University of Illinois Extension has it', () => {
    // it stands an inch apart (Illinois, green onions) until it is thinned to three or four
    const grams = (apartCm: number) => {
      const needed = need(Math.round((100 * 30) / apartCm), 'direct-seed', { spacing: single(30, apartCm) });
      return needed?.from === 'seed' ? needed.grams : ([0, 0] as const);
    };
    expect(overlap(grams(2.54), [7, 7])).toBe(true);
    expect(grams(7.62)[1]).toBeLessThan(7);
  });

  test.each<[SeedAge | null, Between]>([
    [null, [139, 286]],
    ['fresh', [139, 236]],
    ['one-year', [179, 334]],
    ['two-years', [250, 667]],
  ])('%s for a hundred plants in the bed', (seedAge, seeds) => {
    expect(need(100, 'direct-seed', { seedAge })).toMatchObject({ seeds, together: null });
  });

  test('in trays is less than in the bed, and grams follow from 250 to 350 seeds each', () => {
    const [tray, bed] = [need(100, 'raised-seedlings'), need(100, 'direct-seed')];
    if (tray?.from !== 'seed' || bed?.from !== 'seed') throw new Error('no seed');
    expect(tray.seeds[1]).toBeLessThan(bed.seeds[1]);
    expect(bed.grams).toEqual([bed.seeds[0] / 350, bed.seeds[1] / 250]);
  });

  test('of clumps goes by the cell: four plants of four to seven seeds', () => {
    const spacing = { rowCm: 30, plantCm: 30, perStation: 4 };
    expect(need(120, 'raised-seedlings', { spacing })).toMatchObject({
      together: { places: 30, seedsEach: [5, 7] },
      seeds: [150, 210],
    });
  });

  test('needs more where the ground is too hot or too cold for it, and none helps where nothing comes up', () => {
    const seeds = (share: number) => {
      const needed = need(100, 'direct-seed', { share });
      return needed?.from === 'seed' ? needed.seeds[1] : 0;
    };
    expect(seeds(fieldFactor.bed / 2)).toBe(572);
    expect(
      neededFor(standOf(9, usualSpacing), usualSpacing, {
        start: 'direct-seed',
        seedAge: null,
        setSizeMm: 16,
        emergedShare: 0,
      }),
    ).toBeNull();
  });
});

test('bought plants come in bundles of 60 to 75', () => {
  expect(need(150, 'bought-transplants')).toEqual({ from: 'plants', plants: 150, bundles: [2, 3] });
});

describe('the density of a season', () => {
  test('is the usual one where nothing is said', () => {
    const spacing = spacingOf({ rowDistanceCm: null, plantDistanceCm: null, plantsPerStation: null });
    expect(densityOf(spacing)).toBe(planDefaults.densityPerM2);
  });

  test('heeds clumps, and stays within what is worked out', () => {
    expect(densityOf({ rowCm: 30, plantCm: 30, perStation: 4 })).toBeCloseTo(44.4, 1);
    expect(densityOf({ rowCm: 10, plantCm: 2.5, perStation: 12 })).toBe(400);
  });
});
