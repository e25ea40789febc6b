import { describe, expect, test } from 'vitest';
import {
  bedNitrogen,
  type Fertility,
  nitrogenToGive,
  productG,
  readFeedProduct,
  type SoilTexture,
} from '../../src/bed/index.ts';

/** Nitrogen to give with nothing dug in, g per m². */
const give = (aimKgPerM2: number, fertility: Fertility, texture: SoilTexture = 'loam') =>
  nitrogenToGive(aimKgPerM2, bedNitrogen(fertility, 0, false), texture);

type Rate = {
  source: string;
  /** Printed, g N per m². */
  printed: [number, number];
  /** The crop and the bed that the rate is for, as far as the source says. */
  ours: number[];
};

/** Rates are printed without the yield they are for; yields beside them are of trials in the same kind of season. */
const met: Rate[] = [
  {
    source: 'Georgia, sandy soil, short-day: 140–168 kg/ha (Boyhan et al.); short-day crops of 5.5–6 kg/m²',
    printed: [14, 16.8],
    ours: [give(5.5, 'poor', 'sand'), give(6, 'poor', 'sand')],
  },
  {
    source: 'general field crop: 60–100 kg/ha (FAO 33, memory); good crops of 3.5–4.5 kg/m²',
    printed: [6, 10],
    ours: [give(3.5, 'poor'), give(4.5, 'poor')],
  },
  {
    source: 'Quebec muck: 60 kg/ha on rich to 180 on poor (Gonzalez et al. 2016); 7.5 kg/m²',
    printed: [6, 18],
    ours: [give(7.5, 'rich'), give(7.5, 'poor')],
  },
  {
    source: 'Iowa gardens: 49–73 g/m² of 10-10-10 and nothing after (Iowa State 2018); a good crop, 5 kg/m²',
    printed: [4.9, 7.3],
    ours: [give(5, 'ordinary')],
  },
  {
    source:
      'Iowa gardens: 98 g/m² of 10-10-10, then 15 g per m of row, rows 300–380 mm apart (Iowa State 2024); 5.5 kg/m² on poor sand',
    printed: [9.8 + 1.5 / 0.38, 9.8 + 1.5 / 0.3],
    ours: [give(5.5, 'poor', 'sand')],
  },
];

test.each(met)('$source', ({ printed: [least, most], ours }) => {
  for (const nitrogen of ours) {
    expect(nitrogen).toBeGreaterThanOrEqual(least);
    expect(nitrogen).toBeLessThanOrEqual(most);
  }
});

/** Known differences: what the source has more, and why ours stays lower. */
describe('not met', () => {
  test('Limpopo, 60 + 60 + 60 kg/ha: printed for any soil; the best short-day crop seen, 8.4 kg/m², asks a little less of a poor one', () => {
    expect(give(8.4, 'poor')).toBeGreaterThan(0.93 * 18);
    expect(give(8.4, 'poor')).toBeLessThan(18);
  });

  test('Ethiopia, 103.5 kg/ha: the crops seen there gave 1.2–3.0 kg/m², which can not hold so much; furrows washed it out', () => {
    const taken = 3 * 1.8;
    expect(give(3, 'poor')).toBeLessThan(10.35);
    expect(give(3, 'poor')).toBeGreaterThanOrEqual(taken);
  });

  test('Georgia, organic, 168 kg/ha: counts all nitrogen of the source; of meals two thirds come free in a season', () => {
    const meal = readFeedProduct('feather-meal')!;
    const allNitrogen = (productG(meal, give(5.5, 'poor', 'sand')) * meal.nPct) / 100;
    expect(allNitrogen).toBeGreaterThan(16.8);
  });

  test('Minnesota, 15–30 g of urea per m of row: in rows of 300–400 mm more than the best crop seen, 13.4 kg/m², could hold', () => {
    const least = (15 * 0.46) / 0.4;
    const most = (30 * 0.46) / 0.3;
    expect(most).toBeGreaterThan(13.4 * 2.33);
    expect(give(5, 'poor')).toBeLessThan(least);
  });
});
