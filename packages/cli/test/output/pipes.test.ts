import { spawnSync } from 'node:child_process';
import { closeSync, constants, mkdtempSync, openSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { openPipe } from '../../src/output/open-pipe.ts';
import { refusalOf } from '../../src/refusal/refusal.ts';
import { neckfall, program } from '../run-neckfall.ts';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'neckfall-pipe-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

const question = [program, 'cultivars', '--json'];
const inShell = (command: string) =>
  spawnSync('sh', ['-c', command, process.execPath, ...question], {
    encoding: 'utf8',
    cwd: folder,
    maxBuffer: 1 << 26,
    timeout: 60_000,
  });

describe.skipIf(process.platform === 'win32')('a named pipe', () => {
  test('that nobody reads is waited for so long and no longer', async () => {
    const path = join(folder, 'pipe');
    inShell('mkfifo pipe');
    let waits = 0;
    const opened = openPipe(path, async () => {
      waits++;
    });
    const refusal = refusalOf(await opened.catch((error) => error));
    expect(refusal).toMatchObject({ code: 'out-no-reader', exit: 3, values: { value: path, seconds: 30 } });
    expect(waits).toBeGreaterThan(10);
  });

  test('is opened as soon as someone reads', async () => {
    const path = join(folder, 'pipe');
    inShell('mkfifo pipe');
    let reader: number | null = null;
    const file = await openPipe(path, async () => {
      reader = openSync(path, constants.O_RDONLY | constants.O_NONBLOCK);
    });
    expect(reader).not.toBeNull();
    closeSync(file);
    closeSync(Number(reader));
  });

  test('takes an answer longer than it holds, whole', () => {
    const { status, stdout, stderr } = inShell(
      'mkfifo pipe; { while read -r line; do printf "%s\\n" "$line"; done < pipe; } & "$0" "$@" --out pipe; code=$?; wait; exit $code',
    );
    const whole = neckfall('cultivars', '--json').stdout;
    // Linux pipes hold 64 kB: pipe(7), from memory
    expect(whole.length).toBeGreaterThan(2 * 65_536);
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    expect(JSON.parse(stdout)).toEqual(JSON.parse(whole));
  });
});

describe.skipIf(process.platform === 'win32')('standard output by its name', () => {
  const whole = () => neckfall('cultivars', '--json').stdout;

  test('is printed to, be it a socket or a pipe', () => {
    // a child of this process has sockets or pipes, that of a shell has pipes
    const direct = spawnSync(process.execPath, [...question, '--out', '/dev/stdout'], {
      encoding: 'utf8',
      maxBuffer: 1 << 26,
    });
    expect({ ...pick(direct), same: direct.stdout === whole() }).toEqual({
      status: 0,
      stderr: '',
      same: true,
    });
    const piped = inShell('"$0" "$@" --out /dev/stdout | cat');
    expect({ ...pick(piped), same: piped.stdout === whole() }).toEqual({ status: 0, stderr: '', same: true });
  });

  test('is added to where it is a file', () => {
    const added = inShell('echo before > kept; "$0" "$@" --out /dev/stdout >> kept');
    expect(pick(added)).toEqual({ status: 0, stderr: '' });
    expect(readFileSync(join(folder, 'kept'), 'utf8')).toBe(`before\n${whole()}`);
  });

  test('may be nothing', () => {
    expect(neckfall('cultivars', '--json', '--out', '/dev/null')).toEqual({
      code: 0,
      stdout: '',
      stderr: '',
    });
  });
});

function pick({ status, stderr }: { status: number | null; stderr: string }) {
  return { status, stderr };
}
