import { spawn, spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import {
  chmodSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
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

test('of many at once none is refused, and none is lost', async () => {
  const counts = [1, 2, 3, 4, 5, 6, 7, 8];
  const runs = counts.map(
    (count) =>
      new Promise<number | null>((resolve) => {
        const args = ['record', file, '--planting', 'first', '--stand', `${count}`];
        spawn(process.execPath, [program, ...args]).on('exit', resolve);
      }),
  );
  expect(await Promise.all(runs)).toEqual(counts.map(() => 0));
  const stood = observations().flatMap(({ standCount }: { standCount?: number }) => standCount ?? []);
  expect(stood.sort()).toEqual(counts);
});

/** A record that meets another at the worst time: the other has compared, and is about to replace the file. */
test('that another is about to replace the file is seen, and waited for', () => {
  const meets = `
    import fs from 'node:fs';
    import path from 'node:path';
    import { syncBuiltinESMExports } from 'node:module';
    const real = fs.fsyncSync;
    let other = null;
    fs.fsyncSync = (file) => {
      real(file);
      if (other === 'gone') return;
      const own = fs.readdirSync(${JSON.stringify(folder)}).find((name) => name.includes('-' + process.pid + '-'));
      if (other === null) {
        // a draft of a process that lives: the one that started this
        other = path.join(${JSON.stringify(folder)}, own.replace('-' + process.pid + '-', '-' + process.ppid + '-'));
        fs.writeFileSync(other, fs.readFileSync(${JSON.stringify(file)}, 'utf8').replace('Ines', 'Ines and'));
      } else {
        fs.renameSync(other, ${JSON.stringify(file)});
        other = 'gone';
      }
    };
    syncBuiltinESMExports();
  `;
  expect(recordWhile(meets)).toMatchObject({ status: 0, stderr: '' });
  expect(JSON.parse(text())).toMatchObject({ keeper: 'Ines and Tarrant' });
  expect(observations()).toMatchObject([{ id: 'o1' }, { leavesGreen: 6 }]);
});

test('drafts that lie still hold nobody up', () => {
  const head = `.neckfall-${createHash('sha256').update('bank.neckfall.json').digest('hex').slice(0, 12)}-`;
  const machine = createHash('sha256').update('elsewhere').digest('hex').slice(0, 12);
  const left = join(folder, `${head}${machine}-1-aa.tmp`);
  writeFileSync(left, '');
  const minuteAgo = Date.now() / 1000 - 60;
  utimesSync(left, minuteAgo, minuteAgo);
  expect(ofFirst()).toMatchObject({ code: 0, stderr: '' });
  rmSync(left);
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
