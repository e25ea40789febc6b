import { execFileSync } from 'node:child_process';
import { readdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { publint } from 'publint';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { siteAt } from '../../packages/data/src/index.ts';
import { readSiteAssets } from '../../packages/data/src/node.ts';
import {
  atlasEntries,
  dayLength,
  formatDay,
  leadingEntry,
  parseDay,
  planDefaults,
  runPlan,
} from '../../packages/engine/src/index.ts';
import { exampleNames, libraryProject, printed } from '../../tools/setup/library-project.mjs';
import { bundledReader } from './bundled.ts';
import { typeFaults } from './types.ts';

const root = new URL('../../', import.meta.url);
let project: Awaited<ReturnType<typeof libraryProject>>;
let outputs: Record<string, string>;

beforeAll(async () => {
  project = await libraryProject();
  const { folder } = project;
  const all = await Promise.all(exampleNames.map(async (name) => [name, await printed(folder, name)]));
  outputs = Object.fromEntries(all);
}, 240_000);
afterAll(() => rmSync(project.folder, { recursive: true, force: true }));

const assets = readSiteAssets();
const place = { latitudeDeg: 52.1, longitudeDeg: 5.2 };
const plan = {
  ...planDefaults,
  type: 'northern-long',
  start: 'sets',
  startDay: parseDay('2027-03-25')!,
} as const;

describe('what is packed', () => {
  const packed = (at: number) =>
    execFileSync('tar', ['tzf', project.tarballs[at]], { encoding: 'utf8' })
      .trim()
      .split('\n')
      .map((path) => path.replace(/^package\//, ''));
  const modulesOf = (name: string) =>
    readdirSync(new URL(`packages/${name}/src`, root), { recursive: true, encoding: 'utf8' })
      .filter((path) => path.endsWith('.ts'))
      .map((path) => `dist/${path.replaceAll('\\', '/').replace(/\.ts$/, '')}`);

  test.each([
    ['engine', 0, ['LICENSE', 'README.md', 'package.json']],
    [
      'data',
      1,
      [
        'LICENSE',
        'NOTICE',
        'README.md',
        ...readdirSync(new URL('packages/data/assets', root)).map((name) => `assets/${name}`),
        'package.json',
      ],
    ],
  ])('of %s is its modules with their types, and what belongs to them', (name, at, others) => {
    const files = packed(at);
    expect(files.filter((path) => !path.startsWith('dist/')).sort()).toEqual([...others].sort());
    const built = files.filter((path) => path.startsWith('dist/'));
    expect(built.filter((path) => !/\.(js|d\.ts)$/.test(path))).toEqual([]);
    const modules = new Set(modulesOf(name));
    const foreign = built.filter((path) => !modules.has(path.replace(/(\.d\.ts|\.js)$/, '')));
    expect(foreign).toEqual([]);
    expect(built.length).toBeGreaterThan(100);
  });

  test('names no machine, no map and no source that stays behind', () => {
    for (const name of ['engine', 'data']) {
      const dist = join(project.folder, 'node_modules', '@neckfall', name, 'dist');
      for (const file of readdirSync(dist, { recursive: true, encoding: 'utf8' })) {
        if (!/\.(js|ts)$/.test(file)) continue;
        const text = readFileSync(join(dist, file), 'utf8');
        expect(text, file).not.toMatch(/sourceMappingURL|\.ts['"]|\/(home|root|Users|tmp)\/[a-z]/);
      }
    }
  });

  test('tells where the data are from', () => {
    const folder = join(project.folder, 'node_modules', '@neckfall', 'data');
    const notice = readFileSync(join(folder, 'NOTICE'), 'utf8');
    for (const file of readdirSync(join(folder, 'assets'))) expect(notice).toContain(`\nassets/${file}\n`);
    expect(notice).toMatch(/CC BY 4\.0[\s\S]*The ISC License/);
  });

  test.each(['engine', 'data'])('keeps the rules for packages: %s', async (name) => {
    const { messages } = await publint({
      pkgDir: join(project.folder, 'node_modules', '@neckfall', name),
      pack: false,
      strict: true,
    });
    expect(messages).toEqual([]);
  });

  test('leaves nothing in the workspace that something could run by mistake', () => {
    for (const name of ['engine', 'data']) {
      expect(readdirSync(new URL(`packages/${name}`, root))).not.toContain('dist');
    }
  });
});

describe('the worked examples, run from the installed packages', () => {
  const page = readFileSync(new URL('docs/library.md', root), 'utf8');

  test.each(exampleNames)('%s prints what docs/library.md shows', (name) => {
    // when an answer has changed for good: node tools/docs/library-page.mjs
    expect(page).toContain(`\`\`\`console\n$ node ${name}\n${outputs[name]}\`\`\``);
  });

  test('day lengths are those of the engine', () => {
    const lines = outputs['day-lengths.mjs'].trim().split('\n').slice(1);
    expect(lines).toHaveLength(12);
    for (const line of lines) {
      const [date, sunUp, , civil] = line.split(/\s+/);
      const day = parseDay(date)!;
      expect(sunUp).toBe(dayLength(52.1, 5.2, day, 'sun-up').hours.toFixed(1));
      expect(civil).toBe(dayLength(52.1, 5.2, day, 'civil').hours.toFixed(1));
    }
  });

  test('the season is that of the engine', () => {
    const { seasonShares, neckFall } = runPlan(siteAt(assets, place), plan);
    expect(outputs['season.mjs']).toContain(`good in ${Math.round(seasonShares.good * 30)} of 30 years`);
    expect(outputs['season.mjs']).toContain(`tops go over ${formatDay(neckFall.days!.p50)}`);
  });

  test('the map is that of the engine, at ten points', () => {
    const { type, features } = JSON.parse(outputs['map.mjs']);
    expect(type).toBe('FeatureCollection');
    expect(features).toHaveLength(10);
    for (const { geometry, properties } of [features[0], features[9]]) {
      const [longitudeDeg, latitudeDeg] = geometry.coordinates;
      const site = siteAt(assets, { latitudeDeg, longitudeDeg }, { years: 10 });
      const best = leadingEntry(atlasEntries(site, parseDay('2027-01-01')!), { class: null, start: null });
      expect(properties).toEqual({
        class: best.class,
        start: best.start,
        from: formatDay(best.startDay),
        goodShare: best.goodShare,
      });
    }
  });
});

describe('a program on the installed packages', () => {
  test.each(['nodenext', 'bundler'] as const)('has types, resolved as %s', (way) => {
    expect(typeFaults(project.folder, way)).toEqual([]);
  });

  test('can be bundled for browsers, and gives the same season there', async () => {
    const { seasonShares, neckFall } = runPlan(siteAt(assets, place), plan);
    const reader = await bundledReader(project.folder);
    expect(reader.builtins).toEqual([]);
    expect(reader.others).toEqual(['reader.mjs']);
    const same = { good: seasonShares.good, neckFall: neckFall.days };
    expect(reader.seasons.length).toBeGreaterThan(0);
    for (const { where, season } of reader.seasons)
      expect({ where, season }).toEqual({ where, season: same });
  });
});
