import {
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { writeWhole } from '../../src/output/write-whole.ts';
import { refusalOf } from '../../src/refusal/refusal.ts';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'neckfall-write-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

function refused(path: string) {
  try {
    writeWhole(path, 'text');
  } catch (error) {
    return refusalOf(error);
  }
  return null;
}

describe('a file is written whole or not at all', () => {
  test('new or over an older one, leaving nothing else behind', () => {
    const path = join(folder, 'plan.json');
    writeWhole(path, 'first');
    writeWhole(path, 'second');
    expect(readFileSync(path, 'utf8')).toBe('second');
    expect(readdirSync(folder)).toEqual(['plan.json']);
  });

  test('through a link to the file it names', () => {
    const path = join(folder, 'real.json');
    writeFileSync(path, 'old');
    symlinkSync(path, join(folder, 'link.json'));
    writeWhole(join(folder, 'link.json'), 'new');
    expect(readFileSync(path, 'utf8')).toBe('new');
    expect(readdirSync(folder).sort()).toEqual(['link.json', 'real.json']);
  });

  test('not where the folder is missing, is a file, or the name is a folder', () => {
    expect(refused(join(folder, 'no', 'plan.json'))).toMatchObject({ code: 'out-folder', exit: 3 });
    writeFileSync(join(folder, 'file'), '');
    expect(refused(join(folder, 'file', 'plan.json'))).toMatchObject({ code: 'out-folder', exit: 3 });
    mkdirSync(join(folder, 'sub'));
    expect(refused(join(folder, 'sub'))).toMatchObject({ code: 'out-is-folder', exit: 3 });
    expect(readdirSync(folder).sort()).toEqual(['file', 'sub']);
  });
});
