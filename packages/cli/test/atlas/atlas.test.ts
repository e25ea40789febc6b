import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Ajv } from 'ajv';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { AtlasDocument } from '../../src/documents/atlas-schema.ts';
import { neckfall, testDay } from '../run-neckfall.ts';
import { brokenRules } from './geojson-rules.ts';
import { killedOnce } from './killed-once.ts';

const isAtlas = new Ajv({ strict: true, allErrors: true }).compile(
  JSON.parse(readFileSync(new URL('../../schemas/atlas@1.json', import.meta.url), 'utf8')),
);

const few = ['--years', '2', '--today', testDay];
const world = ['atlas', '--region', 'world', '--step', '12', ...few];

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'maps-'));
});
afterAll(() => rmSync(folder, { recursive: true }));
const at = (name: string) => join(folder, name);
const read = (name: string) => readFileSync(at(name), 'utf8');
const expectDone = (run: { code: number | null; stderr: string }) =>
  expect({ code: run.code, said: run.stderr }).toEqual({ code: 0, said: expect.any(String) });

describe('a map of the world', () => {
  beforeAll(() => expectDone(neckfall(...world, '--out', at('world.geojson'))));
  const map = () => JSON.parse(read('world.geojson')) as AtlasDocument;

  test('keeps the rules of GeoJSON and of its own schema, and leaves no part behind', () => {
    expect(brokenRules(read('world.geojson'))).toEqual([]);
    isAtlas(map());
    expect(isAtlas.errors).toBe(null);
    expect(map().features.length).toBeGreaterThan(60);
    expect(existsSync(at('world.geojson.part'))).toBe(false);
  });

  test('tells at each point what `neckfall season` tells for that kind, start and day', () => {
    const { features } = map();
    const sample = features.filter((_, number) => number % Math.ceil(features.length / 8) === 3);
    expect(sample.length).toBeGreaterThan(5);
    for (const { geometry, properties } of sample) {
      const [longitude, latitude] = geometry.coordinates;
      const { class: kind, start, startDate } = properties;
      const plan = ['--class', kind, '--start', start, '--date', startDate];
      const { stdout } = neckfall('season', `--at=${latitude},${longitude}`, ...plan, ...few, '--json');
      const season = JSON.parse(stdout);
      const { gamble, outcome, type, elevationM } = properties;
      expect({ gamble, outcome, type, elevationM }).toEqual({
        gamble: season.gamble,
        outcome: season.outcome,
        type: season.plan.type,
        elevationM: season.place.elevationM,
      });
      expect(properties.goodYearsInTen).toBeCloseTo(10 * season.seasonShares.good, 6);
      expect(properties.neckFall).toBe(season.neckFall.p50);
      const { p50 } = season.bulbDiameterMm;
      if (p50 === null) expect(properties.bulbDiameterMm).toBe(null);
      else expect(properties.bulbDiameterMm).toBeCloseTo(p50, 1);
    }
  });

  test('is read by a geographic program where there is one', (context) => {
    const found = spawnSync('ogrinfo', ['-so', '-al', at('world.geojson')], { encoding: 'utf8' });
    if (found.error) return context.skip('ogrinfo is not installed here');
    expect(found.stdout).toContain(`Feature Count: ${map().features.length}`);
    expect(found.stdout).toMatch(/Geometry: Point/);
  });

  test('has the same points as its table', () => {
    expectDone(neckfall(...world, '--out', at('world.csv')));
    const [head, ...rows] = read('world.csv').trimEnd().split('\r\n');
    expect(head).toBe(
      'latitudeDeg,longitudeDeg,elevationM,class,type,start,startDate,goodYearsInTen,outcome,gamble,neckFall,bulbDiameterMm,isAtHome',
    );
    expect(rows).toHaveLength(map().features.length);
    const { geometry, properties } = map().features[7];
    const [longitude, latitude] = geometry.coordinates;
    expect(rows[7].startsWith(`${latitude},${longitude},${properties.elevationM},${properties.class},`)).toBe(
      true,
    );
  });

  test('is the same to the byte when it was killed on the way and started again', async () => {
    const again = [...world, '--out', at('again.geojson')];
    await killedOnce(again, at('again.geojson.part'), 'SIGKILL');
    expect(existsSync(at('again.geojson'))).toBe(false);
    const run = neckfall(...again);
    expectDone(run);
    expect(run.stderr).toContain('Going on from an earlier run');
    expect(read('again.geojson')).toBe(read('world.geojson'));
    expect(existsSync(at('again.geojson.part'))).toBe(false);
  });

  test('stopped by Ctrl-C says how it goes on', async () => {
    const stopped = [...world, '--out', at('stopped.geojson')];
    const { code, stderr } = await killedOnce(stopped, at('stopped.geojson.part'), 'SIGINT');
    expect(code).toBe(130);
    expect(stderr).toContain(`kept in ${at('stopped.geojson.part')}`);
  });

  test('is the same to the byte from three shards, one of them killed and started again', async () => {
    const shard = (number: number) => [...world, '--shard', `${number}/3`, '--out', at(`${number}.part`)];
    await killedOnce(shard(2), at('2.part'), 'SIGKILL');
    const parts = [1, 2, 3].map((number) => at(`${number}.part`));
    expectDone(neckfall(...shard(1)));
    const early = neckfall('atlas', 'join', ...parts.slice(0, 2), '--out', at('joined.geojson'));
    expect(early.code).toBe(3);
    expect(early.stderr).toMatch(/pieces are in none of these parts/);
    for (const number of [2, 3]) expectDone(neckfall(...shard(number)));
    expectDone(neckfall('atlas', 'join', ...parts, '--out', at('joined.geojson')));
    expect(read('joined.geojson')).toBe(read('world.geojson'));
  });
});

test('a map over the date line keeps the rules too', () => {
  const run = neckfall('atlas', '--region=60,170,70,-160', '--step', '2', ...few, '--json');
  expectDone(run);
  expect(brokenRules(run.stdout)).toEqual([]);
  const longitudes = (JSON.parse(run.stdout) as AtlasDocument).features.map(
    ({ geometry }) => geometry.coordinates[0],
  );
  expect(longitudes.some((longitude) => longitude > 170)).toBe(true);
  expect(longitudes.some((longitude) => longitude < -160)).toBe(true);
});

test('a country keeps to its own towns, and every kind and way can be had', () => {
  const run = neckfall('atlas', '--region', 'Portugal', '--step', '2', '--every', ...few, '--json');
  const map = JSON.parse(run.stdout) as AtlasDocument;
  expect(map.country).toBe('PT');
  expect(isAtlas(map)).toBe(true);
  for (const { properties } of map.features) expect(properties.entries).toHaveLength(12);
  const csv = neckfall('atlas', '--region', 'pt', '--step', '2', '--every', ...few, '--csv').stdout;
  expect(csv.trimEnd().split('\r\n')).toHaveLength(1 + 12 * map.features.length);
  expect(csv.match(/,true\r\n/g)).toHaveLength(map.features.length);
});

test.each([
  { args: ['--region', 'Atlantis'], says: /--region Atlantis: expected world/ },
  { args: ['--region', '50,0,40,10'], says: /south below north/ },
  { args: ['--region', '1,2,3'], says: /SOUTH,WEST,NORTH,EAST/ },
  { args: ['--step', '0'], says: /--step 0: expected a number from 0\.1 to 30/ },
  { args: ['--shard', '4/3', '--out', 'x.part'], says: /--shard 4\/3: expected a part/ },
  { args: ['--shard', '1/3'], says: /name its file with --out/ },
  { args: ['--out', 'map.txt'], says: /ends in \.geojson/ },
  { args: ['join'], says: /Which parts\?/ },
  { args: ['join', 'nowhere.part'], says: /nowhere\.part could not be read/ },
  { args: ['join', 'a.part', '--step', '1'], says: /--step does not go with join/ },
  { args: ['Lyon'], says: /Unexpected "Lyon"/ },
])('is refused in a line with $args', ({ args, says }) => {
  const { code, stdout, stderr } = neckfall('atlas', ...args);
  expect([2, 3]).toContain(code);
  expect(stdout).toBe('');
  expect(stderr.trimEnd().split('\n')).toHaveLength(1);
  expect(stderr).toMatch(says);
});

test('what stands under the name of a part and is none is left as it is', () => {
  writeFileSync(at('mine.geojson.part'), 'my notes\n');
  const run = neckfall(...world, '--out', at('mine.geojson'));
  expect(run.code).toBe(3);
  expect(read('mine.geojson.part')).toBe('my notes\n');
});
