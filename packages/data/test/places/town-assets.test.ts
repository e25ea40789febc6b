import { readFileSync } from 'node:fs';
import { gunzipSync } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { buildPlaceAssets } from '../../../../tools/places/build-place-assets.ts';
import { type Place, readPlaces } from '../../../../tools/places/read-places.ts';
import { foldPrefix } from '../../src/places/fold-name.ts';
import { findTowns, openGazetteer, resolveTown, type Town, townAt } from '../../src/places/index.ts';
import { loadGazetteer } from '../../src/places/node.ts';

const ASSETS = new URL('../../assets/', import.meta.url);
const gazetteer = loadGazetteer();
const places = readPlaces();

function label(town: Town): string {
  const { name, country, region, latitudeDeg, longitudeDeg, elevationM, population, timeZone } = town;
  return [name, country, region, latitudeDeg, longitudeDeg, elevationM, population, timeZone].join('|');
}

describe('the town assets', () => {
  test('are what the build makes of GeoNames today', () => {
    for (const [name, bytes] of buildPlaceAssets(places)) {
      const committed = gunzipSync(readFileSync(new URL(`${name}.gz`, ASSETS)));
      expect(Buffer.compare(committed, bytes), name).toBe(0);
    }
  });

  test('hold every place with all its facts', () => {
    const packed = Array.from({ length: gazetteer.townCount }, (_, town) => label(townAt(gazetteer, town)));
    const expected = places.map(label);
    expect(packed.length).toBe(expected.length);
    expect(new Set(packed)).toEqual(new Set(expected));
    expect(places.length).toBeGreaterThan(118_000);
  });

  test('answer for the larger towns when they are opened alone', () => {
    const large = openGazetteer(new Uint8Array(readFileSync(new URL('towns-large.bin.gz', ASSETS))));
    expect(large.townCount).toBe(places.filter((place) => place.population >= 15_000).length);
    expect(findTowns(large, 'Lyon', 1)).toEqual(findTowns(gazetteer, 'Lyon', 1));
    expect(() => townAt(large, large.townCount)).toThrow(`town ${large.townCount}`);
  });
});

test('every town is found by its own full name', () => {
  const missed = places.filter((place) => {
    const answer = resolveTown(gazetteer, place.name);
    return (
      answer.kind === 'unknown' ||
      ![answer.town, ...answer.others].some((town) => label(town) === label(place))
    );
  });
  expect(missed).toEqual([]);
});

describe('searching by the beginning of a name', () => {
  /** Every name of every town that begins so: 0 for the whole name, and its weight. */
  function naive(query: string, limit: number) {
    const prefix = foldPrefix(query);
    const ranks = new Map<Place, [number, number]>();
    for (const place of places) {
      for (const [key, share] of [
        [place.key, 1] as const,
        ...[...place.otherKeys].map(([k, far]) => [k, far ? 1 / 20 : 1] as const),
      ]) {
        if (!key.startsWith(prefix)) continue;
        const rank: [number, number] = [key === prefix ? 0 : 1, place.population * share];
        const known = ranks.get(place);
        if (known === undefined || rank[0] < known[0] || (rank[0] === known[0] && rank[1] > known[1]))
          ranks.set(place, rank);
      }
    }
    const order = [...ranks].sort(([, a], [, b]) => a[0] - b[0] || b[1] - a[1]);
    return {
      ranks: new Map([...ranks].map(([place, rank]) => [label(place), rank])),
      best: order.slice(0, limit).map(([, rank]) => rank),
    };
  }

  test('finds what a scan of every name finds, in the same order', () => {
    const typed = fc
      .tuple(fc.nat(places.length - 1), fc.integer({ min: 1, max: 9 }), fc.boolean())
      .map(([i, letters, isLoud]) => {
        const beginning = [...places[i].name].slice(0, letters).join('');
        return isLoud ? beginning.toUpperCase() : beginning;
      });
    fc.assert(
      fc.property(typed, fc.integer({ min: 1, max: 12 }), (query, limit) => {
        const { ranks, best } = naive(query, limit);
        fc.pre(best.length > 0 && foldPrefix(query) !== '');
        const found = findTowns(gazetteer, query, limit).towns.map(label);
        // "San P" may also mean towns called San in places that begin with P
        const begun = /\s/.test(query) ? found.filter((town) => ranks.has(town)) : found;
        expect(begun.map((town) => ranks.get(town))).toEqual(best.slice(0, begun.length));
        if (!/\s/.test(query)) expect(begun.length).toBe(best.length);
      }),
      { seed: 3, numRuns: 80 },
    );
  });
});
