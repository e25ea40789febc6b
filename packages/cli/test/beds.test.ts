import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { neckfall } from './run-neckfall.ts';

const folder = mkdtempSync(join(tmpdir(), 'neckfall-beds-'));
const bank = { id: 'bank', name: 'Pencarreg Bank', latitudeDeg: 52.08, longitudeDeg: -3.13, elevationM: 160 };
const crop = {
  id: 'p1',
  name: 'Upper terrace',
  placeId: 'bank',
  bedId: 'long',
  class: 'long',
  start: 'sets',
  startDate: '2027-03-20',
};

let files = 0;
function gardenFile(bed: object, planting: object = {}, others: object[] = []): string {
  const path = join(folder, `${++files}.neckfall.json`);
  const beds = [{ id: 'long', name: 'The long bed', placeId: 'bank', ...bed }];
  const plantings = [{ ...crop, ...planting }, ...others];
  writeFileSync(path, JSON.stringify({ schema: 'neckfall/garden@1', places: [bank], beds, plantings }));
  return path;
}

const quick = ['--today', '2027-05-03', '--years', '3', '--json'];
const season = (path: string) => neckfall('season', path, '--planting', 'p1', ...quick);
const documentOf = (path: string) => JSON.parse(season(path).stdout);

describe('season of a planting in a bed', () => {
  const plain = ['--at', '52.08,-3.13,160', '--class', 'long', '--start', 'sets', '--date', '2027-03-20'];
  const plainly = (...more: string[]) => JSON.parse(neckfall('season', ...plain, ...more, ...quick).stdout);

  test('is grown in its soil, sun and cover, on its water; what the planting says itself goes before', () => {
    const bed = { soil: 'clay', sunHours: 8, cover: 'fleece', water: 'rain' };
    const { neckFall, plan } = documentOf(gardenFile(bed, { cover: 'none' }));
    const told = plainly('--soil', 'clay', '--sun', '8', '--water', 'rain');
    expect(plan).toEqual(told.plan);
    expect(neckFall).toEqual(told.neckFall);
  });

  test('in clumps has the density that they come to', () => {
    const clumps = { rowDistanceCm: 30, plantDistanceCm: 30, plantsPerStation: 4 };
    const { diameterMm, plan } = documentOf(gardenFile({}, clumps));
    expect(plan.densityPerM2).toBeCloseTo(44.4, 1);
    expect(diameterMm).toEqual(plainly('--density', String(4e4 / 900)).diameterMm);
  });
});

describe('a bed that carried onions before', () => {
  test.each([
    [
      'a year after',
      { alliumYears: [2026] },
      [],
      /“The long bed” the year before \(2026\)\. Keep them off it for 3/,
    ],
    [
      'by another planting of the garden',
      {},
      [{ ...crop, id: 'p0', name: 'Before', startDate: '2025-03-20' }],
      /“The long bed” 2 years before \(2025\)/,
    ],
    [
      'with white rot, however long ago',
      { alliumYears: [2001], whiteRot: true },
      [],
      /never again|no onions, garlic or leeks there again/,
    ],
  ])('warns %s, on stderr and in the document', (_, bed, others, sentence) => {
    const path = gardenFile(bed, {}, others);
    const { code, stdout, stderr } = season(path);
    expect(code).toBe(0);
    const { warnings } = JSON.parse(stdout);
    expect(warnings.filter((warning: string) => sentence.test(warning))).toHaveLength(1);
    expect(stderr.replaceAll(/\s+/g, ' ')).toMatch(sentence);
  });

  test.each([
    ['three years after', { alliumYears: [2024] }],
    ['where nothing is known', {}],
  ])('is silent %s', (_, bed) => {
    const { stdout, stderr } = season(gardenFile(bed));
    expect({ stderr, warnings: JSON.parse(stdout).warnings }).toEqual({ stderr: '', warnings: [] });
  });
});
