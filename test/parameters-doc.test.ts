import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parameterEntries, parametersPage } from '../tools/docs/parameters-page.ts';

const read = (path: string) => readFileSync(new URL(`../${path}`, import.meta.url), 'utf8');
const entries = parameterEntries().map((entry) => ({
  ...entry,
  label: entry.type === null ? entry.name : `${entry.name} of ${entry.type}`,
}));

test('docs/parameters.md shows the parameters in use (else: npx tsx tools/docs/parameters.ts)', () => {
  expect(read('docs/parameters.md')).toBe(parametersPage());
});

describe('a parameter', () => {
  test('lies within its bounds', () => {
    const outside = entries
      .filter(({ parameter: { value, low, high } }) => !(low < high && value >= low && value <= high))
      .map(({ label, parameter: { value, low, high } }) => `${label}: ${value}, bounds ${low}–${high}`);
    expect(outside).toEqual([]);
  });

  test('says where it comes from, and in what unit it is', () => {
    // A mark, or at least a source with its year.
    const known = /\b(seen|derived|memory|fit|common practice, no source)\b|\b(19|20)\d\d/;
    const silent = entries.filter(({ parameter: { unit, origin } }) => unit === '' || !known.test(origin));
    expect(silent.map(({ label }) => label)).toEqual([]);
  });

  test('is explained in docs/how-it-works.md', () => {
    const text = read('docs/how-it-works.md');
    const names = [...new Set(entries.map(({ name }) => name))];
    expect(names.filter((name) => !new RegExp(`\\b${name}\\b`).test(text))).toEqual([]);
    expect(names.length).toBeGreaterThan(30);
  });
});
