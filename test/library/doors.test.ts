import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';

const root = new URL('../../', import.meta.url);
const packages = ['engine', 'data'];
type Manifest = {
  name: string;
  version: string;
  sideEffects: boolean;
  dependencies: Record<string, string>;
  exports: Record<string, { types: string; default: string }>;
};
const manifests = packages.map(
  (name) => JSON.parse(readFileSync(new URL(`packages/${name}/package.json`, root), 'utf8')) as Manifest,
);

/** As the tools read it: comments are allowed there. */
const { paths } = JSON.parse(
  readFileSync(new URL('tsconfig.json', root), 'utf8').replace(/^\s*\/\/.*$/gm, ''),
).compilerOptions as { paths: Record<string, string[]> };

describe('each door of the library', () => {
  const doors = manifests.flatMap(({ name, exports }, at) =>
    Object.entries(exports).map(([door, files]) => ({ name: name + door.slice(1), files, at })),
  );

  test.each(doors)('$name is packed from the source that the workspace reads', ({ name, files, at }) => {
    const [source] = paths[name];
    const built = source.replace(`./packages/${packages[at]}/src/`, './dist/');
    expect(files).toEqual({
      types: built.replace(/\.ts$/, '.d.ts'),
      default: built.replace(/\.ts$/, '.js'),
    });
    expect(existsSync(new URL(source, root))).toBe(true);
  });

  test('and no other is mapped', () => {
    expect(Object.keys(paths).sort()).toEqual(doors.map(({ name }) => name).sort());
  });

  test.each(doors)('$name is read from the sources here', async ({ name }) => {
    const byName = await import(name);
    const bySource = await import(fileURLToPath(new URL(paths[name][0], root)));
    expect(Object.keys(byName)).toEqual(Object.keys(bySource));
    for (const key of Object.keys(byName)) expect(byName[key]).toBe(bySource[key]);
  });
});

test('the packages go together, change nothing by being loaded, and say what they need', () => {
  const [engine, data] = manifests;
  expect(data.version).toBe(engine.version);
  expect(data.dependencies[engine.name]).toBe(engine.version);
  for (const { sideEffects, dependencies } of manifests) {
    expect(sideEffects).toBe(false);
    for (const version of Object.values(dependencies)) expect(version).toMatch(/^\d+\.\d+\.\d+$/);
  }
});
