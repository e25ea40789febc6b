import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';

const ROOT = new URL('../', import.meta.url);
const read = (path: string) => readFileSync(new URL(path, ROOT), 'utf8');
const notice = read('NOTICE');
const section = (heading: string) => notice.split(`\n${heading}`)[1].split('\n\n\n')[0];

describe('NOTICE, of the data shipped', () => {
  /** Blocks of paths at the margin, followed by what, source and licence. */
  const blocks = section('DATA')
    .split('\n\n')
    .map((block) => block.trim().split('\n'))
    .filter((lines) => lines[0] !== '');
  const paths = blocks.flatMap((lines) => lines.filter((line) => !line.startsWith(' ')));

  test('names every asset and no other', () => {
    const assets = readdirSync(new URL('packages/data/assets', ROOT)).map(
      (file) => `packages/data/assets/${file}`,
    );
    expect([...paths].sort()).toEqual(assets.sort());
  });

  test.each(blocks.map((lines) => [lines[0], lines.join('\n')]))(
    'says whose %s is and under what licence',
    (_, text) => {
      for (const field of ['What', 'Source', 'Licence'])
        expect(text).toMatch(new RegExp(`^ {2}${field}: +\\S`, 'm'));
    },
  );
});

test('NOTICE names every typeface shipped, and no other', () => {
  const folder = 'packages/app/src/look/fonts';
  const shipped = readdirSync(new URL(folder, ROOT)).map((file) => `${folder}/${file}`);
  const named = notice.split('\n').filter((line) => line.startsWith(folder));
  expect(named.sort()).toEqual(shipped.sort());
  expect(notice).toContain('SIL OPEN FONT LICENSE Version 1.1');
});

type LockEntry = {
  readonly dependencies?: Record<string, string>;
  readonly optionalDependencies?: Record<string, string>;
  readonly link?: boolean;
  readonly resolved?: string;
};

/** Where npm put every package that some workspace package needs to run, by path. */
function productionTree(): Set<string> {
  const packages = JSON.parse(read('package-lock.json')).packages as Record<string, LockEntry>;
  const shipped = new Set<string>();
  const visit = (path: string) => {
    const entry = packages[path];
    for (const name of Object.keys({ ...entry.dependencies, ...entry.optionalDependencies })) {
      let folder = path;
      let found = `${folder}/node_modules/${name}`;
      while (packages[found] === undefined) {
        if (folder === '') throw new Error(`${name}, needed by ${path}, is not in package-lock.json`);
        folder = folder.includes('/') ? folder.slice(0, folder.lastIndexOf('/')) : '';
        found = folder === '' ? `node_modules/${name}` : `${folder}/node_modules/${name}`;
      }
      if (packages[found].link === true || shipped.has(found)) continue;
      shipped.add(found);
      visit(found);
    }
  };
  for (const path of Object.keys(packages)) if (/^packages\/[^/]+$/.test(path)) visit(path);
  return shipped;
}

test('NOTICE names every library shipped, and no other, with the licence that its package states', () => {
  const named = section('LIBRARIES')
    .split('\n')
    .map((line) => line.split(/ {2,}/))
    .filter((cells) => cells.length === 3)
    .map(([name, licence, copyright]) => ({
      name,
      licence,
      hasCopyright: copyright.startsWith('Copyright '),
    }));
  const shipped = [...productionTree()].map((path) => {
    const { name, license } = JSON.parse(read(`${path}/package.json`));
    return { name, licence: license, hasCopyright: true };
  });
  const byName = (a: { name: string }, b: { name: string }) => (a.name < b.name ? -1 : 1);
  expect(named.sort(byName)).toEqual(shipped.sort(byName));
  expect(shipped.length).toBeGreaterThan(8);
});
