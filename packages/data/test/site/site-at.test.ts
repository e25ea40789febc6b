import { landWarmingSinceNormalsC } from '@neckfall/engine';
import { describe, expect, test } from 'vitest';
import { siteAt } from '../../src/index.ts';
import { readSiteAssets } from '../../src/node.ts';

const assets = readSiteAssets();
const lyon = { latitudeDeg: 45.76, longitudeDeg: 4.84 };

describe('a site at a point', () => {
  test('is opened as the commands have it where nothing is said', () => {
    const site = siteAt(assets, lyon);
    expect(site).toMatchObject({ years: 30, seed: 1, record: null });
    const cooler = siteAt(assets, lyon, { warmerC: 0 });
    const [warm, cool] = [site, cooler].map(({ climate }) => climate.tempMeanC[6]);
    expect(warm - cool).toBeCloseTo(landWarmingSinceNormalsC, 6);
  });

  test('takes what is said, and leaves what is undefined as it is', () => {
    expect(siteAt(assets, { ...lyon, elevationM: 900 }).climate.elevationM).toBe(900);
    expect(siteAt(assets, lyon, { years: 4, seed: 9 })).toMatchObject({ years: 4, seed: 9 });
    const unsaid = { years: undefined } as unknown as { years: number };
    expect(siteAt(assets, lyon, unsaid).years).toBe(30);
  });

  test('knows what growers of the district do', () => {
    const near = assets.practice()[0];
    expect(siteAt(assets, near).practice).toContainEqual(near);
  });

  test.each([
    [{ latitudeDeg: 91, longitudeDeg: 0 }, /91.*−90…90/],
    [{ latitudeDeg: 45, longitudeDeg: 200 }, /200.*−180…180/],
    [{ latitudeDeg: Number.NaN, longitudeDeg: 0 }, /NaN.*−90…90/],
    [{ latitudeDeg: 78.2, longitudeDeg: 15.6 }, /60° S to 72° N/],
    [{ latitudeDeg: 45, longitudeDeg: -30 }, /at sea, \d+ km from/],
  ])('says what is wrong with %o', (point, words) => {
    expect(() => siteAt(assets, point)).toThrow(RangeError);
    expect(() => siteAt(assets, point)).toThrow(words);
  });
});

test('a folder without the files is told by the first that is needed', () => {
  const elsewhere = readSiteAssets(new URL('./', import.meta.url));
  expect(() => siteAt(elsewhere, lyon)).toThrow(/towns-large/);
});
