import { appendFileSync, mkdtempSync, readFileSync, rmSync, truncateSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { dayNumber } from '../../../engine/src/index.ts';
import { joinParts } from '../../src/atlas/join-parts.ts';
import { growPart, openPart } from '../../src/atlas/part-file.ts';
import type { AtlasSettings } from '../../src/atlas/settings.ts';
import type { Tile } from '../../src/atlas/tile-maker.ts';
import { tilesOf } from '../../src/atlas/tiles.ts';
import { refusalOf } from '../../src/refusal/refusal.ts';

const settings: AtlasSettings = {
  region: 'all',
  box: { southDeg: -60, westDeg: -180, northDeg: 72, eastDeg: 180 },
  country: null,
  stepDeg: 8,
  class: null,
  start: null,
  isFull: false,
  years: 10,
  seed: 1,
  warmerC: null,
  sunHours: null,
  from: dayNumber(2027, 1, 1),
};
const { count } = tilesOf(settings);
const tileOf = (tile: number): Tile => ({
  tile,
  points: [
    {
      latitudeDeg: tile,
      longitudeDeg: tile - 60,
      elevationM: 10 * tile,
      class: 'long',
      type: 'northern-long',
      start: 'sets',
      startDate: '2027-04-02',
      goodYearsInTen: tile % 11,
      outcome: 'good',
      gamble: false,
      neckFall: '2027-08-02',
      bulbDiameterMm: 60.5,
      isAtHome: true,
    },
  ],
});

let folder: string;
let made = 0;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'parts-'));
});
afterAll(() => rmSync(folder, { recursive: true }));
const newPath = () => join(folder, `${++made}.part`);

/** A part with some tiles. */
function written(tiles: readonly number[], own = settings): string {
  const path = newPath();
  const part = growPart(path, own);
  for (const tile of tiles) part.add(tileOf(tile));
  part.close();
  return path;
}

const codeOf = (work: () => unknown) => {
  try {
    work();
  } catch (error) {
    return refusalOf(error)?.code;
  }
  return 'none';
};

describe('a part of a map', () => {
  test('gives back what was put into it, after it was closed too', () => {
    const part = openPart(written([3, 0, 5]));
    expect([0, 1, 3, 5].map(part.has)).toEqual([true, false, true, true]);
    expect(part.read(3)).toEqual(tileOf(3));
    expect(part.settings).toEqual(settings);
    part.close();
  });

  test('torn off anywhere holds the tiles before and goes on from there', () => {
    const whole = written([0, 1, 2]);
    const bytes = readFileSync(whole);
    const headEnds = bytes.indexOf(10) + 1;
    fc.assert(
      fc.property(fc.integer({ min: headEnds, max: bytes.length - 1 }), (end) => {
        const path = newPath();
        writeFileSync(path, bytes);
        truncateSync(path, end);
        const before = openPart(path);
        const held = before.count();
        expect(held).toBeLessThan(3);
        before.close();
        const part = growPart(path, settings);
        expect(part.count()).toBe(held);
        for (const tile of [0, 1, 2]) if (!part.has(tile)) part.add(tileOf(tile));
        part.close();
        expect(readFileSync(path)).toEqual(bytes);
      }),
      { seed: 20261130, numRuns: 60 },
    );
  });

  test('with a letter changed no longer knows that tile', () => {
    const path = written([0, 1]);
    writeFileSync(path, readFileSync(path, 'utf8').replace(/"elevationM":10\b/, '"elevationM":11'));
    const part = openPart(path);
    expect([part.has(0), part.has(1)]).toEqual([true, false]);
    part.close();
  });

  test('of another map is refused and stays as it is, as is any other file', () => {
    const path = written([0]);
    const before = readFileSync(path);
    expect(codeOf(() => growPart(path, { ...settings, stepDeg: 4 }))).toBe('map-part-other');
    expect(readFileSync(path)).toEqual(before);
    const letter = newPath();
    appendFileSync(letter, 'Dear Aunt,\n');
    expect(codeOf(() => growPart(letter, settings))).toBe('map-part-none');
    expect(readFileSync(letter, 'utf8')).toBe('Dear Aunt,\n');
    expect(codeOf(() => openPart(newPath()))).toBe('map-part-missing');
  });
});

describe('parts joined', () => {
  test('are the same however the tiles were dealt out, some of them twice', () => {
    fc.assert(
      fc.property(
        fc.array(fc.nat(2), { minLength: count, maxLength: count }),
        fc.array(fc.nat(count - 1), { maxLength: 4 }),
        (dealt, twice) => {
          const paths = [0, 1, 2].map((hand) =>
            written([
              ...dealt.flatMap((to, tile) => (to === hand ? [tile] : [])),
              ...(hand === 0 ? twice : []),
            ]),
          );
          const all = joinParts(paths);
          for (let tile = 0; tile < count; tile++) expect(all.read(tile)).toEqual(tileOf(tile));
          all.close();
        },
      ),
      { seed: 20261130, numRuns: 12 },
    );
  });

  test('are refused where a tile is missing or one is of another map', () => {
    const [even, odd] = [0, 1].map((rest) =>
      Array.from({ length: count }, (_, tile) => tile).filter((tile) => tile % 2 === rest),
    );
    const first = written(even);
    expect(codeOf(() => joinParts([first]))).toBe('map-parts-missing');
    expect(codeOf(() => joinParts([first, written(odd, { ...settings, years: 5 })]))).toBe(
      'map-parts-differ',
    );
  });
});
