import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { neckfall, program } from '../run-neckfall.ts';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'neckfall-killed-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

const question = ['cultivars', '--find', 'Sturon', '--json'];

/** Kills the process before its n-th touch of the folder, half way through it where that is a write. */
const killer = `
  import fs from 'node:fs';
  import { syncBuiltinESMExports } from 'node:module';
  const { KILL_FOLDER: folder, KILL_AT } = process.env;
  const open = new Set();
  let left = Number(KILL_AT);
  for (const name of ['openSync', 'writeSync', 'fchmodSync', 'fsyncSync', 'closeSync', 'renameSync', 'readdirSync']) {
    const real = fs[name];
    fs[name] = (first, ...rest) => {
      const touches = typeof first === 'string' ? first.startsWith(folder) : open.has(first);
      if (touches && left-- === 0) {
        if (name === 'writeSync') real(first, rest[0].subarray(0, rest[0].length >> 1));
        process.kill(process.pid, 'SIGKILL');
      }
      const result = real(first, ...rest);
      if (name === 'openSync' && touches) open.add(result);
      if (name === 'closeSync') open.delete(first);
      return result;
    };
  }
  syncBuiltinESMExports();
`;

function killedAt(at: number, out: string) {
  const preload = `data:text/javascript,${encodeURIComponent(killer)}`;
  const { signal, status, stderr } = spawnSync(
    process.execPath,
    ['--import', preload, program, ...question, '--out', out],
    { encoding: 'utf8', env: { ...process.env, KILL_FOLDER: folder, KILL_AT: String(at) } },
  );
  expect(stderr).toBe('');
  expect(status).toBe(signal === null ? 0 : null);
  return signal !== null;
}

test.skipIf(process.platform === 'win32')(
  'whenever a run is killed the file is the old one or the new one, and the next run goes through',
  () => {
    const out = join(folder, 'onions.json');
    const whole = neckfall(...question).stdout;
    const seen = new Set<string>();
    let at = 0;
    let isKilled = true;
    while (isKilled) {
      writeFileSync(out, 'old');
      isKilled = killedAt(at++, out);
      const found = readFileSync(out, 'utf8');
      expect(['old', whole]).toContain(found);
      seen.add(isKilled ? found : 'to the end');
      // a run clears what the one before it left
      expect(readdirSync(folder).length).toBeLessThanOrEqual(2);
    }
    expect(seen).toEqual(new Set(['old', whole, 'to the end']));
    // opened, given its mode, written, forced to the disk, closed, renamed
    expect(at).toBeGreaterThan(6);
    expect(readdirSync(folder)).toEqual(['onions.json']);
  },
);
