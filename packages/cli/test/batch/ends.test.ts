import { spawn, spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { neckfallQuick, program } from '../run-neckfall.ts';
import { file, folder, header, makeFolder } from './lines-of.ts';

makeFolder();

describe('--out', () => {
  const rows = file('out-rows.csv', `${header}\na,45.76,4.84,long,sets,03-25\nb,91,0,long,sets,03-25\n`);

  test('holds the lines, whole', () => {
    const out = join(folder, 'lines.jsonl');
    const { code, stdout } = neckfallQuick('season', '--batch', rows, '--out', out);
    expect({ code, stdout }).toEqual({ code: 0, stdout: '' });
    expect(readFileSync(out, 'utf8').trimEnd().split('\n')).toHaveLength(2);
  });

  test('is left as it was where no row could be answered', () => {
    const out = file('older.jsonl', 'older\n');
    const bad = file('bad-rows.csv', `${header}\na,91,0,long,sets,03-25\n`);
    expect(neckfallQuick('season', '--batch', bad, '--out', out).code).toBe(3);
    expect(readFileSync(out, 'utf8')).toBe('older\n');
  });

  test.skipIf(!existsSync('/dev/full'))('to a full disk is refused', () => {
    const { code, stderr } = neckfallQuick('season', '--batch', rows, '--out', '/dev/full');
    expect(code).toBe(3);
    expect(stderr).toMatch(/^--out \/dev\/full: the disk is full\./);
  });
});

/** More rows than are answered before anyone can react. */
const many = file(
  'many.csv',
  `${header}\n${Array.from({ length: 3000 }, (_, i) => `r${i},${45 + (i % 50) / 100},4.84,long,sets,03-25\n`).join('')}`,
);

test.skipIf(process.platform === 'win32')(
  'Ctrl-C in the middle ends with 130 and leaves no file behind',
  async () => {
    const target = mkdtempSync(join(folder, 'stopped-'));
    const child = spawn(process.execPath, [
      program,
      'season',
      '--batch',
      many,
      '--out',
      join(target, 'lines.jsonl'),
    ]);
    let stderr = '';
    child.stderr.on('data', (chunk) => {
      stderr += chunk;
    });
    // the draft of the file is there as soon as rows are being answered
    while (readdirSync(target).length === 0) await new Promise((resolve) => setImmediate(resolve));
    child.kill('SIGINT');
    const code = await new Promise((resolve) => child.on('close', resolve));
    expect({ code, stderr, left: readdirSync(target) }).toEqual({ code: 130, stderr: '', left: [] });
  },
);

test('a reader that has seen enough ends a batch quietly', async () => {
  const child = spawn(process.execPath, [program, 'season', '--batch', many]);
  let stderr = '';
  child.stderr.on('data', (chunk) => {
    stderr += chunk;
  });
  child.stdout.once('data', () => child.stdout.destroy());
  const code = await new Promise((resolve) => child.on('close', resolve));
  expect({ code, stderr }).toEqual({ code: 0, stderr: '' });
});

test.skipIf(process.platform === 'win32')('a disk that fills up in the middle leaves no file behind', () => {
  const target = mkdtempSync(join(folder, 'filled-'));
  const out = join(target, 'lines.jsonl');
  // a file may grow to 100 blocks of at most 1 kB and no further
  const command = 'ulimit -f 100; exec "$0" "$@"';
  const batch = [program, 'season', '--batch', many, '--years', '1', '--out', out];
  const { status, stderr } = spawnSync('sh', ['-c', command, process.execPath, ...batch], {
    encoding: 'utf8',
  });
  expect(status).toBe(3);
  expect(stderr).toBe(`--out ${out} could not be written (EFBIG). Nothing was written.\n`);
  expect(readdirSync(target)).toEqual([]);
});
