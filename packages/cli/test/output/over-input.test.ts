import { spawnSync } from 'node:child_process';
import {
  closeSync,
  linkSync,
  mkdirSync,
  mkdtempSync,
  openSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { neckfallQuick, program, testDay } from '../run-neckfall.ts';

const folder = mkdtempSync(join(tmpdir(), 'neckfall-over-'));
afterAll(() => rmSync(folder, { recursive: true }));

const contents = {
  garden: '{"schema":"neckfall/garden@1","places":[],"cultivars":[],"plantings":[]}',
  batch: 'id,latitude,longitude\na,45.76,4.84\n',
  weather: 'date,temp_min_c,temp_max_c\n2027-01-01,1,9\n2027-01-02,-3,4\n',
};
type Input = keyof typeof contents;

beforeAll(() => {
  mkdirSync(join(folder, 'sub'));
  for (const [name, content] of Object.entries(contents)) {
    writeFileSync(join(folder, name), content);
    symlinkSync(join(folder, name), join(folder, `${name}-symlink`));
    linkSync(join(folder, name), join(folder, `${name}-hard-link`));
  }
});

const commands: Record<Input, string[]> = {
  garden: ['season', 'Lyon', '--class', 'long', '--start', 'sets', '--date', '03-25', '--garden'],
  batch: ['where', '--batch'],
  weather: ['where', 'Lyon', '--weather'],
};

describe.each(['garden', 'batch', 'weather'] as const)('the file of --%s', (input) => {
  test.each([
    ['by the same name', input],
    ['by another spelling', `sub/../${input}`],
    ['by a symbolic link', `${input}-symlink`],
    ['by a hard link', `${input}-hard-link`],
  ])('is never written over: %s', (_, name) => {
    const before = readdirSync(folder);
    const out = `${folder}/${name}`;
    const { code, stdout, stderr } = neckfallQuick(...commands[input], join(folder, input), '--out', out);
    expect({ code, stdout, stderr }).toEqual({
      code: 3,
      stdout: '',
      stderr: `--out ${out} is the file that --${input} reads, and would be lost. Name another file.\n`,
    });
    expect(readFileSync(join(folder, input), 'utf8')).toBe(contents[input]);
    expect(readdirSync(folder)).toEqual(before);
  });
});

test('a table on standard input is not written over either', () => {
  const path = join(folder, 'batch');
  const input = openSync(path, 'r');
  const run = spawnSync(
    process.execPath,
    [program, 'where', '--batch', '-', '--out', path, '--years', '1', '--today', testDay],
    { encoding: 'utf8', stdio: [input, 'pipe', 'pipe'] },
  );
  closeSync(input);
  expect(run.status).toBe(3);
  expect(run.stderr).toContain('is the file that --batch reads');
  expect(readFileSync(path, 'utf8')).toBe(contents.batch);
});

test.skipIf(process.platform === 'win32')('a device may be read and written at once', () => {
  const { stderr } = neckfallQuick('where', '--batch', '/dev/null', '--out', '/dev/null');
  expect(stderr).toMatch(/^--batch \/dev\/null has no rows/);
});
