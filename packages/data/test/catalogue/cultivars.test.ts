import { readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import type { CatalogueAsset, CatalogueEntry } from '../../src/catalogue/catalogue-entry.ts';
import { type Cultivar, catalogueSources, cultivars } from '../../src/index.ts';
import { entryIssues } from './entry-issues.ts';

const bytes = readFileSync(new URL('../../assets/cultivars.json', import.meta.url));
const asset: CatalogueAsset = JSON.parse(bytes.toString('utf8'));

describe('the catalogue', () => {
  test.each(asset.cultivars.map((entry) => [entry.name, entry] as const))('%s is in order', (_, entry) => {
    expect(entryIssues(entry, asset.sources)).toEqual([]);
  });

  test('is small: 40 kB compressed at most', () => {
    expect(gzipSync(bytes).length).toBeLessThanOrEqual(40_000);
  });

  test('is in the order of the alphabet, so that an onion has one place', () => {
    const names = asset.cultivars.map(({ name }) => name.toLowerCase());
    expect(names).toEqual([...names].sort());
  });

  test('lists no source without need, each with title and address', () => {
    const used = new Set(
      asset.cultivars.flatMap(({ source, from = {} }) => [source, ...Object.values(from)]),
    );
    for (const [key, { title, url }] of Object.entries(asset.sources)) {
      expect(used).toContain(key);
      expect(title.length).toBeGreaterThan(5);
      expect(url).toMatch(/^https?:\/\/\S+$/);
    }
  });
});

test('the example of docs/catalogue.md is the entry it stands for', () => {
  const page = readFileSync(new URL('../../../../docs/catalogue.md', import.meta.url), 'utf8');
  const example = JSON.parse(/```json\n(.*?)```/s.exec(page)?.[1] ?? '{}');
  expect(example).toEqual(asset.cultivars.find(({ name }) => name === example.name));
});

describe('an entry is refused', () => {
  const good: CatalogueEntry = {
    name: 'Tarrant’s Keeper',
    class: 'long',
    type: 'northern-long',
    argued: ['region'],
    regions: ['Pencarreg Bank'],
    starts: ['direct-seed'],
    source: 'farm-notes',
    memory: ['class'],
  };
  const sources = { 'farm-notes': { title: 'Invented notes', url: 'https://example.org/notes' } };

  test('never when in order', () => expect(entryIssues(good, sources)).toEqual([]));

  test.each<[string, object, RegExp]>([
    ['from a source that is not listed', { source: 'hearsay' }, /hearsay is not listed/],
    ['with one field from a source that is not listed', { colour: 'red', from: { colour: 'x' } }, /x is not/],
    ['with an origin for nothing', { memory: ['class', 'colour'] }, /colour has an origin and no value/],
    ['both from memory and from a source', { from: { class: 'farm-notes' } }, /both memory and/],
    ['with a number that has no unit', { criticalDayLength: 14 }, /criticalDayLength 14 has no unit/],
    ['with a field nobody knows', { note: 'nice' }, /note is no field/],
    ['with a colour outside the set', { colour: 'tan' }, /colour tan: expected yellow/],
    ['with a shape outside the set', { shape: 'grano' }, /shape grano: expected flat/],
    ['without a region', { regions: undefined }, /regions is missing/],
    ['without a reason for its type', { argued: [] }, /say what told the type/],
    [
      'with months of keeping from memory',
      { keepsMonths: [3, 4], memory: ['class', 'keepsMonths'] },
      /usual/,
    ],
    ['with a class of its own from memory', { class: 'short' }, /short is not that of northern-long/],
    ['with sets as a start and not as a use', { starts: ['sets'] }, /sets are a start/],
    ['as a shallot with a start', { kind: 'shallot' }, /not modelled/],
  ])('%s', (_, change, says) => {
    const issues = entryIssues({ ...good, ...change } as CatalogueEntry, sources);
    expect(issues.join('\n')).toMatch(says);
  });
});

describe('onions', () => {
  const named = (name: string) => cultivars.find((cultivar) => cultivar.name === name) as Cultivar;

  test('have names and ids of their own', () => {
    const names = cultivars.flatMap(({ name, aliases }) =>
      [name, ...aliases].map((text) => text.toLowerCase()),
    );
    expect(new Set(names).size).toBe(names.length);
    expect(new Set(cultivars.map(({ id }) => id)).size).toBe(cultivars.length);
  });

  test('have an origin for each field that is known', () => {
    for (const cultivar of cultivars) {
      const { id: _id, type: _type, argued: _argued, keepsFrom: _from, origins, ...fields } = cultivar;
      for (const [field, value] of Object.entries(fields)) {
        const isKnown = value !== null && !(Array.isArray(value) && value.length === 0);
        const origin = origins[field as keyof typeof origins];
        if (!isKnown || (field === 'kind' && value === 'bulb-onion')) continue;
        expect({ name: cultivar.name, field, origin }).toMatchObject({ origin: expect.any(String) });
        if (origin !== 'memory') expect(Object.keys(catalogueSources)).toContain(origin);
      }
    }
  });

  test('with two names are one: Creamgold and Pukekohe Longkeeper', () => {
    expect(named('Pukekohe Longkeeper').aliases).toContain('Creamgold');
    expect(named('Creamgold')).toBeUndefined();
  });

  // Oregon State University Extension, day lengths of cultivars
  test.each([
    ['Ebenezer', 13],
    ['Early Yellow Globe', 13.5],
    ['Red Wethersfield', 14],
    ['Yellow Globe Danvers', 14.25],
    ['Yellow Sweet Spanish', 14.9],
  ])('%s has its published need of %d h', (name, hours) => {
    expect(named(name).need).toMatchObject({ fromH: hours, toH: hours, light: 'sun-up' });
    expect(catalogueSources[named(name).origins.need as string].title).toContain('Oregon');
  });

  test('keep by what was published, else by their kind', () => {
    // Yoo 1987: six to eight weeks
    expect(named('Texas Grano 1015Y')).toMatchObject({ keepsMonths: [1.5, 2], keepsFrom: 'cultivar' });
    expect(named('Copra')).toMatchObject({ keepsMonths: [8, 10], keepsFrom: 'type' });
    expect(named('Walla Walla')).toMatchObject({ keepsMonths: [1, 2], keepsFrom: 'type' });
    expect(named('Ole')).toMatchObject({ keepsMonths: [3, 4], keepsFrom: 'type' });
    expect(named('Express Yellow')).toMatchObject({ keepsMonths: [2, 3], keepsFrom: 'type' });
    expect(named('Jagro')).toMatchObject({ keepsMonths: [5, 7], keepsFrom: 'type' });
    for (const { keepsFrom, origins } of cultivars) {
      expect(keepsFrom === 'type').toBe(origins.keepsMonths === 'memory');
    }
  });

  test('that split are kept apart and never started', () => {
    const apart = cultivars.filter(({ kind }) => kind !== 'bulb-onion');
    expect(apart.length).toBeGreaterThanOrEqual(9);
    for (const { starts } of apart) expect(starts).toEqual([]);
  });
});
