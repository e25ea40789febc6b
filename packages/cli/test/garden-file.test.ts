import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { speaker } from '@neckfall/words';
import { describe, expect, test } from 'vitest';
import { readGardenFile } from '../src/files/garden-file.ts';
import { neckfall } from './run-neckfall.ts';

const folder = mkdtempSync(join(tmpdir(), 'neckfall-garden-'));
const levels = 100_000;
const deep = `${'['.repeat(levels)}${']'.repeat(levels)}`;

describe('a garden file that is nested without end is refused in one line', () => {
  test.each([
    ['alone', deep],
    ['in an onion', `{"schema":"neckfall/garden@1","cultivars":[{"class":${deep}}]}`],
    ['in a field unknown here', `{"schema":"neckfall/garden@1","notes":${deep}}`],
  ])('%s', (name, text) => {
    const path = join(folder, `${name}.json`);
    writeFileSync(path, text);
    const { code, stdout, stderr } = neckfall('which', 'Lyon', '--garden', path);
    expect({ code, stdout }).toEqual({ code: 3, stdout: '' });
    expect(stderr.split('\n')).toHaveLength(2);
    expect(stderr).toContain('nested');
    expect(stderr.length).toBeLessThan(400);
  });
});

test('of two onions of like names, the one named is found', () => {
  const path = join(folder, 'alike.json');
  const cultivars = [
    { id: 'a', name: 'Tin', class: 'long' },
    { id: 'b', name: 'tin', class: 'short' },
  ];
  writeFileSync(path, JSON.stringify({ schema: 'neckfall/garden@1', cultivars }));
  const { find } = readGardenFile(path, speaker('metric'));
  expect(find('Tin')?.id).toBe('a');
  expect(find('tin')?.id).toBe('b');
  expect(find('TIN')?.id).toBe('a');
});
