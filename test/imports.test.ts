import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';

const root = fileURLToPath(new URL('../', import.meta.url));

/** Packages from the lowest up; each may import those below it. */
const packages = ['engine', 'data', 'words', 'answers', 'cli', 'app'];
/** Words speak for themselves: they know no package but the one that formats messages. */
const mayImport: Record<string, string[]> = {
  engine: [],
  data: ['engine'],
  words: [],
  answers: ['engine', 'data', 'words'],
  cli: ['engine', 'data', 'words', 'answers'],
  app: ['engine', 'data', 'words', 'answers'],
};

/** Folders of the engine from the lowest level up; a folder imports from lower levels only. */
const levels = [
  ['math', 'calendar', 'units'],
  ['sky'],
  ['climate'],
  ['weather'],
  ['plant', 'bed'],
  ['season'],
  ['choice', 'garden'],
];

type Import = { file: string; from: string };

function sourceFiles(folder: string): string[] {
  return readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.tsx?$/.test(name))
    .map((name) => join(folder, name).split(sep).join('/'));
}

function importsOf(file: string): Import[] {
  const text = readFileSync(join(root, file), 'utf8');
  const found = text.matchAll(/(?:^|\n)\s*(?:import|export)\b[^;'"]*?from\s*'([^']+)'|import\(\s*'([^']+)'/g);
  return [...found].map((match) => ({ file, from: match[1] ?? match[2] }));
}

/** Path from the root of a relative import. */
function target({ file, from }: Import): string {
  return relative(root, resolve(root, dirname(file), from))
    .split(sep)
    .join('/');
}

const imports = packages.flatMap((name) => sourceFiles(`packages/${name}/src`).flatMap(importsOf));
const relativeImports = imports.filter(({ from }) => from.startsWith('.'));
const packageOf = (path: string) => path.split('/')[1];

test('imports were found', () => {
  expect(imports.length).toBeGreaterThan(100);
});

describe('packages', () => {
  test('import each other by name, and only downward', () => {
    const wrong = imports.filter(({ file, from }) => {
      const name = /^@neckfall\/([a-z]+)/.exec(from)?.[1];
      return name !== undefined && !mayImport[packageOf(file)].includes(name);
    });
    expect(wrong).toEqual([]);
  });

  test('never reach into each other by path', () => {
    const wrong = relativeImports.filter((found) => {
      const own = `packages/${packageOf(found.file)}/`;
      return !target(found).startsWith(own);
    });
    expect(wrong).toEqual([]);
  });

  test('are entered by their doors', () => {
    const doors: Record<string, string[]> = {};
    for (const name of packages) {
      const manifest = JSON.parse(readFileSync(join(root, `packages/${name}/package.json`), 'utf8'));
      doors[manifest.name] = Object.keys(manifest.exports);
    }
    const wrong = imports.filter(({ from }) => {
      const [, name, rest] = /^(@neckfall\/[a-z]+)(.*)$/.exec(from) ?? [];
      return name !== undefined && !doors[name].includes(`.${rest}`);
    });
    expect(wrong).toEqual([]);
  });
});

describe('the engine', () => {
  const engine = 'packages/engine/src/';
  const folderOf = (path: string) => path.slice(engine.length).split('/')[0];
  const levelOf = (folder: string) => levels.findIndex((level) => level.includes(folder));
  const inner = relativeImports.filter(
    ({ file }) => file.startsWith(engine) && file.slice(engine.length).includes('/'),
  );

  test('has no folder without a level', () => {
    const folders = readdirSync(join(root, engine), { withFileTypes: true }).filter((entry) =>
      entry.isDirectory(),
    );
    const unknown = folders.filter(
      ({ name }) => levelOf(name) < 0 && sourceFiles(`${engine}${name}`).length > 0,
    );
    expect(unknown.map(({ name }) => name)).toEqual([]);
  });

  test('imports downward only', () => {
    const wrong = inner.filter((found) => {
      const [from, to] = [folderOf(found.file), folderOf(target(found))];
      return from !== to && levelOf(to) >= levelOf(from);
    });
    expect(wrong).toEqual([]);
  });

  test('enters a folder by its index', () => {
    const wrong = inner.filter((found) => {
      const to = folderOf(target(found));
      return to !== folderOf(found.file) && target(found) !== `${engine}${to}/index.ts`;
    });
    expect(wrong).toEqual([]);
  });

  test('takes nothing from outside but its generator of random numbers', () => {
    const outside = imports.filter(({ file, from }) => file.startsWith(engine) && !from.startsWith('.'));
    expect([...new Set(outside.map(({ from }) => from.split('/')[0]))]).toEqual(['pure-rand']);
  });

  test('has no clock, chance, screen, files or console', () => {
    const forbidden =
      /\b(Date|Math\.random|console|process|performance|document|window|globalThis|setTimeout|fetch|crypto|require)\b(?=[.(\s;,)])/;
    const wrong = sourceFiles(engine).flatMap((file) => {
      const code = withoutCommentsAndStrings(readFileSync(join(root, file), 'utf8'));
      const word = forbidden.exec(code)?.[0];
      return word === undefined ? [] : [{ file, word }];
    });
    expect(wrong).toEqual([]);
  });
});

test('words know no other package than the reader of the message format', () => {
  const reader = '@formatjs/icu-messageformat-parser';
  const outside = imports.filter(
    ({ file, from }) => packageOf(file) === 'words' && !from.startsWith('.') && from !== reader,
  );
  expect(outside).toEqual([]);
});

function withoutCommentsAndStrings(text: string): string {
  return text
    .replace(/\/\*[\s\S]*?\*\//g, '')
    .replace(/\/\/.*$/gm, '')
    .replace(/'(?:[^'\\\n]|\\.)*'|`(?:[^`\\]|\\.)*`/g, "''");
}
