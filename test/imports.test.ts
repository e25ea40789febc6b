import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';

const root = fileURLToPath(new URL('../', import.meta.url));

/** Packages from the lowest up; each may import those below it. */
const packages = ['engine', 'data', 'words', 'answers', 'pictures', 'element', 'cli', 'app'];
/** Words speak for themselves: they know no package but the one that formats messages. */
const mayImport: Record<string, string[]> = {
  engine: [],
  data: ['engine'],
  words: [],
  answers: ['engine', 'data', 'words'],
  pictures: ['engine', 'words', 'answers'],
  element: ['engine', 'words', 'answers', 'pictures'],
  cli: ['engine', 'data', 'words', 'answers', 'pictures'],
  app: ['engine', 'data', 'words', 'answers', 'pictures'],
};

/**
 * Folders of each package from the lowest level up, with files beside them that all may use; a folder imports from
 * lower levels only. Any other file beside the folders stands above them all.
 */
const levels: Record<string, string[][]> = {
  engine: [
    ['limits', 'math', 'calendar', 'units'],
    ['sky'],
    ['climate'],
    ['weather'],
    ['plant', 'bed'],
    ['season'],
    ['choice', 'garden'],
    ['atlas', 'latitude', 'learn', 'stand'],
    ['tend'],
    ['keep'],
    ['jobs'],
    ['why'],
    ['questions'],
  ],
  data: [['fetch', 'live', 'weather-files'], ['climate', 'places'], ['catalogue', 'practice'], ['site']],
  // a folder a language
  words: [foldersIn('packages/words/src')],
  answers: [['facts', 'place'], ['sentences'], ['calendar', 'handout']],
  // a folder a picture, over what they are drawn with
  pictures: [
    ['drawing'],
    ['section'],
    ['year-line'],
    foldersIn('packages/pictures/src').filter(
      (name) => !['drawing', 'section', 'year-line', 'question'].includes(name),
    ),
    ['question'],
  ],
  // one file that a page loads, of a few modules
  element: [[]],
  cli: [
    ['assets-folder.ts', 'version.ts', 'refusal'],
    ['files', 'output', 'raster', 'threads', 'values'],
    ['options'],
    ['completion', 'place'],
    ['frame', 'print'],
    ['documents'],
    ['text'],
    ['answer'],
    ['atlas', 'batch', 'grow'],
    ['commands'],
  ],
  app: [
    ['address', 'device', 'files', 'look', 'offline', 'turns', 'worker'],
    ['ask', 'garden'],
    ['state'],
    ['controls'],
    ['pages'],
    ['shell'],
  ],
};

/** A folder that has the first of these is entered by it; the others are for one kind of host alone. */
const doors = ['index.ts', 'browser.ts', 'node.ts'];

function foldersIn(folder: string): string[] {
  return readdirSync(join(root, folder), { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => name);
}

type Import = { file: string; from: string };

function sourceFiles(folder: string): string[] {
  return readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.tsx?$/.test(name))
    .map((name) => join(folder, name).split(sep).join('/'));
}

function importsOf(file: string): Import[] {
  const text = readFileSync(join(root, file), 'utf8');
  const found = text.matchAll(
    /(?:^|\n)\s*(?:import|export)\b[^;'"]*?from\s*'([^']+)'|import\(\s*'([^']+)'|(?:^|\n)import\s*'([^']+)'/g,
  );
  return [...found].map((match) => ({ file, from: match[1] ?? match[2] ?? match[3] }));
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

describe.each(packages)('the folders of %s', (name) => {
  const source = `packages/${name}/src/`;
  /** A folder, or a file beside the folders. */
  const unitOf = (path: string) => path.slice(source.length).split('/')[0];
  const levelOf = (unit: string) => {
    const level = levels[name].findIndex((units) => units.includes(unit));
    return level < 0 ? levels[name].length : level;
  };
  const inner = relativeImports.filter(
    (found) => found.file.startsWith(source) && target(found).startsWith(source),
  );

  test('have a level each', () => {
    const units = new Set(readdirSync(join(root, source)));
    const leveled = levels[name].flat();
    expect(leveled.filter((unit) => !units.has(unit))).toEqual([]);
    expect([...units].filter((unit) => !unit.includes('.') && !leveled.includes(unit))).toEqual([]);
  });

  test('import downward only', () => {
    const wrong = inner.filter((found) => {
      const [from, to] = [unitOf(found.file), unitOf(target(found))];
      const isTop = levelOf(from) === levels[name].length;
      return from !== to && !isTop && levelOf(to) >= levelOf(from);
    });
    expect(wrong).toEqual([]);
  });

  test('are entered by their doors', () => {
    const wrong = inner.filter((found) => {
      const to = target(found);
      const entered = foldersAbove(to).filter((folder) => !found.file.startsWith(`${folder}/`));
      return entered.some((folder) => hasDoor(folder) && !doors.some((door) => to === `${folder}/${door}`));
    });
    expect(wrong).toEqual([]);
  });
});

test.each(['engine', 'answers'])('each folder of %s has a door', (name) => {
  expect(levels[name].flat().filter((folder) => !hasDoor(`packages/${name}/src/${folder}`))).toEqual([]);
});

test('pages of the app share what lies below them, and never reach into each other', () => {
  const pageOf = (path: string) => /^packages\/app\/src\/pages\/([^/]+)/.exec(path)?.[1];
  const wrong = relativeImports.filter((found) => {
    const [from, to] = [pageOf(found.file), pageOf(target(found))];
    return from !== undefined && to !== undefined && from !== to;
  });
  expect(wrong).toEqual([]);
});

/** Folders that hold this file, from the outermost inside `src` on. */
function foldersAbove(path: string): string[] {
  const parts = path.split('/');
  return parts.slice(3, -1).map((_, at) => parts.slice(0, 4 + at).join('/'));
}

function hasDoor(folder: string): boolean {
  return existsSync(join(root, folder, doors[0]));
}

describe('the engine', () => {
  const engine = 'packages/engine/src/';

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

test('words know no other package than those of the message format', () => {
  const formats = ['@formatjs/fast-memoize', '@formatjs/icu-messageformat-parser', 'intl-messageformat'];
  const outside = imports.filter(
    ({ file, from }) => packageOf(file) === 'words' && !from.startsWith('.') && !formats.includes(from),
  );
  expect(outside).toEqual([]);
});

function withoutCommentsAndStrings(text: string): string {
  return text
    .replace(/\/\*[\s\S]*?\*\//g, '')
    .replace(/\/\/.*$/gm, '')
    .replace(/'(?:[^'\\\n]|\\.)*'|`(?:[^`\\]|\\.)*`/g, "''");
}
