import { execFileSync } from 'node:child_process';
import {
  chmodSync,
  linkSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  readlinkSync,
  rmSync,
  statSync,
  symlinkSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { draftFor } from '../../src/output/drafts.ts';
import { wholeFile } from '../../src/output/whole-file.ts';
import { refusalOf } from '../../src/refusal/refusal.ts';

const hasModes = process.platform !== 'win32';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'neckfall-write-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

function writeWhole(path: string, text: string) {
  const file = wholeFile(path);
  file.write(text);
  file.keep();
}

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

  test('through links to a file that is not there yet', () => {
    mkdirSync(join(folder, 'sub'));
    symlinkSync('sub/second.json', join(folder, 'first.json'));
    symlinkSync('real.json', join(folder, 'sub', 'second.json'));
    writeWhole(join(folder, 'first.json'), 'new');
    expect(readFileSync(join(folder, 'sub', 'real.json'), 'utf8')).toBe('new');
    expect(readlinkSync(join(folder, 'first.json'))).toBe('sub/second.json');
  });

  test('not where the folder is missing, is a file, or the name is a folder', () => {
    expect(refused(join(folder, 'no', 'plan.json'))).toMatchObject({ code: 'out-folder', exit: 3 });
    writeFileSync(join(folder, 'file'), '');
    expect(refused(join(folder, 'file', 'plan.json'))).toMatchObject({ code: 'out-folder', exit: 3 });
    mkdirSync(join(folder, 'sub'));
    for (const path of [join(folder, 'sub'), `${join(folder, 'new')}/`, ''])
      expect(refused(path)).toMatchObject({ code: 'out-is-folder', exit: 3 });
    expect(readdirSync(folder).sort()).toEqual(['file', 'sub']);
  });

  test('not where a link leads round in a circle', () => {
    symlinkSync('b', join(folder, 'a'));
    symlinkSync('a', join(folder, 'b'));
    expect(refused(join(folder, 'a'))).toMatchObject({ code: 'out-failed', exit: 3 });
    expect(readdirSync(folder).sort()).toEqual(['a', 'b']);
  });

  // Linux, macOS and Windows take names of 255 bytes or letters: the manual pages of pathconf (NAME_MAX), from memory
  test.each([
    ['255 letters', 'n'.repeat(250)],
    ['letters of four bytes', '🧅'.repeat(62)],
  ])('under the longest names: %s', (_, stem) => {
    const name = `${stem}.json`;
    writeWhole(join(folder, name), 'text');
    expect(readdirSync(folder)).toEqual([name]);
  });

  test.skipIf(!hasModes)('with the mode that the file had, whatever the umask', () => {
    const path = join(folder, 'plan.json');
    for (const mode of [0o600, 0o666, 0o640]) {
      writeFileSync(path, 'old');
      chmodSync(path, mode);
      const file = wholeFile(path);
      const [draft] = readdirSync(folder).filter((name) => name !== 'plan.json');
      // what nobody else may read they may not read in the making either
      expect((statSync(join(folder, draft)).mode & 0o777).toString(8)).toBe(mode.toString(8));
      file.write('new');
      file.keep();
      expect((statSync(path).mode & 0o777).toString(8)).toBe(mode.toString(8));
    }
  });
});

describe('a draft that a killed run left behind', () => {
  /** The id of a process that has ended. */
  const ended = Number(execFileSync(process.execPath, ['-p', 'process.pid'], { encoding: 'utf8' }));
  const draftOf = (pid: number, target = join(folder, 'plan.json')) => {
    const path = draftFor(target, pid);
    writeFileSync(path, 'half');
    return path;
  };

  test('is cleared by the next write to the same file', () => {
    draftOf(ended);
    draftOf(ended);
    writeWhole(join(folder, 'plan.json'), 'new');
    expect(readdirSync(folder)).toEqual(['plan.json']);
  });

  test('is cleared where its process number has since become ours', () => {
    draftOf(process.pid);
    writeWhole(join(folder, 'plan.json'), 'new');
    expect(readdirSync(folder)).toEqual(['plan.json']);
  });

  test('stays while a process of its number lives, but no longer than a day', () => {
    const draft = draftOf(process.ppid);
    writeWhole(join(folder, 'plan.json'), 'new');
    expect(readdirSync(folder)).toHaveLength(2);
    utimesSync(draft, 0, 0);
    writeWhole(join(folder, 'plan.json'), 'newer');
    expect(readdirSync(folder)).toEqual(['plan.json']);
  });

  test('stays where it is of another file, or of another machine on a shared disk', () => {
    draftOf(ended, join(folder, 'other.json'));
    writeFileSync(draftFor(join(folder, 'plan.json'), ended, 'elsewhere'), 'half');
    writeWhole(join(folder, 'plan.json'), 'new');
    expect(readdirSync(folder)).toHaveLength(3);
  });

  test('is not mistaken for one of two that are being written now', () => {
    const path = join(folder, 'plan.json');
    const [first, second] = [wholeFile(path), wholeFile(path)];
    first.write('first');
    second.write('second');
    first.keep();
    second.keep();
    expect(readFileSync(path, 'utf8')).toBe('second');
    expect(readdirSync(folder)).toEqual(['plan.json']);
  });
});

test('hard links are told from the file they share: the other name keeps what it had', () => {
  const path = join(folder, 'plan.json');
  writeFileSync(path, 'old');
  linkSync(path, join(folder, 'kept.json'));
  writeWhole(path, 'new');
  expect([readFileSync(path, 'utf8'), readFileSync(join(folder, 'kept.json'), 'utf8')]).toEqual([
    'new',
    'old',
  ]);
});
