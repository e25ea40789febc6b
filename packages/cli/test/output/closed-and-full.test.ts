import { spawn, spawnSync } from 'node:child_process';
import {
  chmodSync,
  closeSync,
  existsSync,
  mkdtempSync,
  openSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { program, testDay } from '../run-neckfall.ts';

const where = [program, 'where', 'Lyon', '--json', '--years', '3', '--today', testDay];
const isRoot = process.getuid?.() === 0;
const hasFull = existsSync('/dev/full');

/** Root may write anywhere, so it becomes nobody. */
const asAnyone = isRoot ? { uid: 65_534, gid: 65_534 } : {};

test('a reader that closes early is no error', async () => {
  const child = spawn(process.execPath, where);
  child.stdout.destroy();
  let stderr = '';
  child.stderr.on('data', (chunk) => {
    stderr += chunk;
  });
  const code = await new Promise((resolve) => child.on('close', resolve));
  expect({ code, stderr }).toEqual({ code: 0, stderr: '' });
});

test.skipIf(process.platform === 'win32')('a read-only folder is refused and stays as it is', () => {
  const folder = mkdtempSync(join(tmpdir(), 'neckfall-read-only-'));
  chmodSync(folder, 0o555);
  const out = join(folder, 'plan.json');
  const { status, stdout, stderr } = spawnSync(process.execPath, [...where, '--out', out], {
    encoding: 'utf8',
    ...asAnyone,
  });
  expect({ status, stdout }).toEqual({ status: 3, stdout: '' });
  expect(stderr).toBe(
    `--out ${out}: this place may not be written to (EACCES). Name a file in a folder of your own.\n`,
  );
  expect(readdirSync(folder)).toEqual([]);
  rmSync(folder, { recursive: true });
});

test.skipIf(process.platform === 'win32')(
  'a read-only file stays as it is, though its folder may be written to',
  () => {
    const folder = mkdtempSync(join(tmpdir(), 'neckfall-read-only-'));
    chmodSync(folder, 0o777);
    const out = join(folder, 'plan.json');
    writeFileSync(out, 'old');
    chmodSync(out, 0o444);
    const { status, stderr } = spawnSync(process.execPath, [...where, '--out', out], {
      encoding: 'utf8',
      ...asAnyone,
    });
    expect(status).toBe(3);
    expect(stderr).toMatch(/may not be written to \(EACCES\)/);
    expect(readFileSync(out, 'utf8')).toBe('old');
    expect(readdirSync(folder)).toEqual(['plan.json']);
    rmSync(folder, { recursive: true });
  },
);

test.skipIf(!hasFull)('a full disk is refused', () => {
  const { status, stderr } = spawnSync(process.execPath, [...where, '--out', '/dev/full'], {
    encoding: 'utf8',
  });
  expect(status).toBe(3);
  expect(stderr).toBe(
    '--out /dev/full: the disk is full. Nothing was written; make room or name another place.\n',
  );
});

test.skipIf(!hasFull)('printing to a full disk is refused', () => {
  const full = openSync('/dev/full', 'w');
  const { status, stderr } = spawnSync(process.execPath, where, {
    encoding: 'utf8',
    stdio: ['ignore', full, 'pipe'],
  });
  closeSync(full);
  expect(status).toBe(3);
  expect(stderr).toBe('The answer could not be printed: the disk behind the output is full (ENOSPC).\n');
});

test.skipIf(process.platform === 'win32')('Ctrl-C ends with 130 and nothing printed', () => {
  // the process interrupts itself as soon as it listens
  const interrupt =
    'process.on("newListener",(name)=>{if(name==="SIGINT")process.kill(process.pid,"SIGINT")})';
  const { status, signal, stdout, stderr } = spawnSync(
    process.execPath,
    ['--import', `data:text/javascript,${encodeURIComponent(interrupt)}`, ...where],
    { encoding: 'utf8' },
  );
  expect({ status, signal, stdout, stderr }).toEqual({ status: 130, signal: null, stdout: '', stderr: '' });
});
