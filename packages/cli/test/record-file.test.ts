import { spawn, spawnSync } from 'node:child_process';
import { chmodSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeEach, expect, test } from 'vitest';
import { neckfall, program } from './run-neckfall.ts';

const folder = mkdtempSync(join(tmpdir(), 'neckfall-record-file-'));
afterAll(() => rmSync(folder, { recursive: true }));
const file = join(folder, 'bank.neckfall.json');
const written = JSON.stringify(
  {
    schema: 'neckfall/garden@1',
    keeper: 'Ines Tarrant',
    plantings: [{ id: 'first', name: 'The long bed' }],
    observations: [{ id: 'o1', plantingId: 'first', date: '2027-05-10', leavesGreen: 5 }],
  },
  null,
  2,
);
beforeEach(() => writeFileSync(file, written));
const text = () => readFileSync(file, 'utf8');
const observations = () => JSON.parse(text()).observations;
const ofFirst = () => neckfall('record', file, '--planting', 'first', '--leaves', '6');

test.skipIf(process.platform === 'win32')('the file keeps its mode', () => {
  chmodSync(file, 0o640);
  ofFirst();
  expect(statSync(file).mode & 0o777).toBe(0o640);
});

/** Runs `change` as another program would, just before the file is replaced for the n-th time. */
const meddling = (times: number) => `
  import fs from 'node:fs';
  import { syncBuiltinESMExports } from 'node:module';
  const real = fs.fsyncSync;
  let left = ${times};
  fs.fsyncSync = (file) => {
    real(file);
    if (left-- > 0) fs.writeFileSync(${JSON.stringify(file)}, fs.readFileSync(${JSON.stringify(file)}, 'utf8').replace('Ines', 'Ines and'));
  };
  syncBuiltinESMExports();
`;
const recordWhile = (meddler: string) =>
  spawnSync(
    process.execPath,
    [
      '--import',
      `data:text/javascript,${encodeURIComponent(meddler)}`,
      program,
      'record',
      file,
      '--planting',
      'first',
      '--leaves',
      '6',
    ],
    { encoding: 'utf8' },
  );

test('what another program changes meanwhile is never lost', () => {
  expect(recordWhile(meddling(1))).toMatchObject({ status: 0 });
  expect(JSON.parse(text())).toMatchObject({ keeper: 'Ines and Tarrant' });
  expect(observations()).toMatchObject([{ id: 'o1' }, { leavesGreen: 6 }]);
});

test('a file that is changed again and again is left to that', () => {
  const { status, stderr, stdout } = recordWhile(meddling(99));
  expect({ status, stdout }).toEqual({ status: 3, stdout: '' });
  expect(stderr).toContain('being changed by something else');
  expect(observations()).toHaveLength(1);
});

test('of two at once none is refused, and the file is whole', async () => {
  const runs = ['--leaves', '--stand'].map(
    (option) =>
      new Promise<number | null>((resolve) => {
        const child = spawn(process.execPath, [program, 'record', file, '--planting', 'first', option, '6']);
        child.on('exit', resolve);
      }),
  );
  expect(await Promise.all(runs)).toEqual([0, 0]);
  expect(observations().length).toBeGreaterThanOrEqual(2);
});

test.skipIf(process.platform === 'win32')(
  'whenever it is killed the file is the old one or the new one, and what was left is cleared',
  async () => {
    ofFirst();
    const seen = new Set<boolean>();
    for (let kill = 0; kill < 8; kill++) {
      writeFileSync(file, written);
      const child = spawn(process.execPath, [
        program,
        'record',
        file,
        '--planting',
        'first',
        '--leaves',
        '6',
      ]);
      const end = new Promise((resolve) => child.on('exit', resolve));
      const killing = setTimeout(() => child.kill('SIGKILL'), 60 + kill * 60);
      await end;
      clearTimeout(killing);
      const found = text();
      seen.add(found === written);
      if (found !== written) expect(JSON.parse(found).observations).toHaveLength(2);
    }
    expect(ofFirst().code).toBe(0);
    expect(readdirSync(folder).filter((name) => name.endsWith('.tmp'))).toEqual([]);
    expect(seen.has(true)).toBe(true);
  },
);
