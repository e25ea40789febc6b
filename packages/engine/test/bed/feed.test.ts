import { describe, expect, test } from 'vitest';
import {
  bedNitrogen,
  drawnNitrogenG,
  limeAdvice,
  nitrogenRemovedGPerKg,
  nitrogenSuppliedGPerKg,
  nitrogenTakenShare,
  nitrogenToGive,
  organicFeeds,
  productG,
  readFeedProduct,
  splitFeeds,
} from '../../src/bed/index.ts';

describe('a product is read', () => {
  test.each([
    ['10-10-10', '10-10-10'],
    [' 10 - 10 - 10 ', '10-10-10'],
    ['7.5-3-4', '7.5-3-4'],
    ['7,5-3-4', '7.5-3-4'],
    ['10–4–8', '10-4-8'],
    ['46-0-0', '46-0-0'],
    ['Blood meal', 'blood-meal'],
    ['poultry_compost', 'poultry-compost'],
  ])('%s', (text, name) => {
    expect(readFeedProduct(text)?.name).toBe(name);
  });

  test.each(['', '10-10', '10-10-10-2', '60-30-20', '0-20-20', '-5-10-10', 'lime', '1e1-0-0', 'constructor'])(
    'but not %j',
    (text) => {
      expect(readFeedProduct(text)).toBeNull();
    },
  );

  test('bags print phosphorus and potassium as oxides, organic sources print nothing', () => {
    expect(readFeedProduct('10-4-8')).toMatchObject({ nPct: 10, phosphatePct: 4, potashPct: 8 });
    expect(readFeedProduct('compost')).toMatchObject({ phosphatePct: null, potashPct: null });
  });

  test('weighs as much as gives its nitrogen', () => {
    expect(productG(readFeedProduct('10-10-10')!, 5)).toBe(50);
    expect(productG(readFeedProduct('46-0-0')!, 4.6)).toBeCloseTo(10);
    // 12 % of which 68 % come free in the first season
    expect(productG(readFeedProduct('blood-meal')!, 5)).toBeCloseTo(61.3, 1);
    for (const name of ['10-10-10', ...organicFeeds]) {
      const product = readFeedProduct(name)!;
      expect(drawnNitrogenG(product, productG(product, 3.7))).toBeCloseTo(3.7);
    }
  });
});

describe('nitrogen of a crop', () => {
  test('taken away and to be had, as printed for 60 t/ha', () => {
    expect(10 * 6 * nitrogenRemovedGPerKg).toBeCloseTo(108);
    expect(10 * 6 * nitrogenSuppliedGPerKg).toBeGreaterThanOrEqual(120);
    expect(10 * 6 * nitrogenSuppliedGPerKg).toBeLessThanOrEqual(140);
    // CDFA's own mean lies between the two
    expect(1.97).toBeGreaterThan(nitrogenRemovedGPerKg);
    expect(1.97).toBeLessThan(nitrogenSuppliedGPerKg);
  });

  test('a better bed leaves less to give, never less than nothing', () => {
    const give = (...bed: Parameters<typeof bedNitrogen>) => nitrogenToGive(4, bedNitrogen(...bed), 'loam');
    expect(give('poor', 0, false)).toBeGreaterThan(give('ordinary', 0, false));
    expect(give('ordinary', 0, false)).toBeGreaterThan(give('ordinary', 2, false));
    expect(give('ordinary', 2, false)).toBeGreaterThan(give('ordinary', 2, true));
    expect(give('rich', 10, true)).toBe(0);
  });

  test('a tenth of the nitrogen of compost comes free in its first season', () => {
    expect(bedNitrogen('poor', 3, false).compost).toBeCloseTo(3);
  });

  test('rain takes part of it on sand', () => {
    const bed = bedNitrogen('poor', 0, false);
    expect(nitrogenToGive(5, bed, 'sand')).toBeGreaterThan(1.2 * nitrogenToGive(5, bed, 'loam'));
  });

  test('little is taken up before bulbs begin', () => {
    expect([0, 3, 5, 7.5, 12].map(nitrogenTakenShare)).toEqual([0, 0.05, 0.15, 0.375, 0.375]);
    expect(nitrogenTakenShare(4)).toBeCloseTo(0.1);
  });
});

describe('feeds', () => {
  const bag = readFeedProduct('10-10-10')!;
  const chances = [
    { leaves: null, day: 0 },
    { leaves: 2, day: 20 },
    { leaves: 3, day: 35 },
    { leaves: 4, day: 45 },
    { leaves: 5, day: 55 },
    { leaves: 6, day: 65 },
  ];
  const daysOf = (...of: Parameters<typeof splitFeeds>) => splitFeeds(...of).map(({ day }) => day);

  test('are three equal ones, spread up to the start of bulbs', () => {
    const feeds = splitFeeds(9, bag, chances, 63, false);
    expect(feeds.map(({ day }) => day)).toEqual([0, 20, 55]);
    expect(feeds.map(({ nitrogenG }) => nitrogenG)).toEqual([3, 3, 3]);
  });

  test('hold at every stage more than the crop has taken by then', () => {
    for (const toGive of [1, 4.5, 9, 14]) {
      let given = 0;
      for (const { leaves, nitrogenG } of splitFeeds(toGive, bag, chances, 80, false)) {
        expect(given / toGive).toBeGreaterThanOrEqual(nitrogenTakenShare(leaves ?? 0));
        given += nitrogenG;
      }
      expect(given).toBeCloseTo(toGive);
    }
  });

  test('are more on sand, and fewer where there is little to give or little time', () => {
    expect(daysOf(9, bag, chances, 80, true)).toHaveLength(4);
    expect(daysOf(3, bag, chances, 80, false)).toEqual([0]);
    expect(daysOf(9, bag, chances, 42, false)).toEqual([0, 20]);
    expect(daysOf(9, bag, chances, 5, false)).toEqual([0]);
    expect(daysOf(9, bag, chances, 0, false)).toEqual([]);
    expect(daysOf(0, bag, chances, 63, false)).toEqual([]);
  });

  test('of what releases slowly come earlier and are fewer', () => {
    const last = (name: string) => daysOf(9, readFeedProduct(name)!, chances, 70, false).at(-1)!;
    expect(last('feather-meal')).toBeLessThan(last('10-10-10'));
    expect(daysOf(9, readFeedProduct('compost')!, chances, 70, false)).toEqual([0]);
  });

  test('never more of a bag at once than a garden guide prints', () => {
    const [only] = splitFeeds(15, bag, chances, 5, false);
    expect(only.nitrogenG).toBe(9.8);
    expect(splitFeeds(15, readFeedProduct('feather-meal')!, chances, 30, false)[0].nitrogenG).toBe(15);
  });
});

test('lime follows from pH', () => {
  expect([4.8, 5.5, 5.9, 6, 7, 7.1].map(limeAdvice)).toEqual([
    'lime',
    'lime-perhaps',
    'lime-perhaps',
    'fits',
    'fits',
    'no-lime',
  ]);
});
