import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

export const program = fileURLToPath(new URL('../bin/neckfall.mjs', import.meta.url));

export type Run = { code: number | null; stdout: string; stderr: string };

/** The day on which the tests take place. */
export const testDay = '2027-05-03';

/** A process that is idle this long will never end; an answer takes under a second. */
const longestMs = 20_000;

/**
 * Runs the built command line as a process of its own. About one process in several hundred on a virtual test
 * machine never ends, idle without using the processor (cause not found): it is said aloud and run once more.
 */
export function neckfall(...args: string[]): Run {
  const run = () =>
    spawnSync(process.execPath, [program, ...args], {
      encoding: 'utf8',
      maxBuffer: 1 << 26,
      timeout: longestMs,
      env: { ...process.env, NO_COLOR: '1' },
    });
  let { status, stdout, stderr, error } = run();
  if ((error as NodeJS.ErrnoException | undefined)?.code === 'ETIMEDOUT') {
    // whether it had answered tells a hang at the end from one at the start
    const printed = `${stdout.length} characters on stdout, ${stderr.length} on stderr`;
    console.warn(`no end within ${longestMs / 1000} s (${printed}), run again: neckfall ${args.join(' ')}`);
    ({ status, stdout, stderr, error } = run());
  }
  if (error) throw error;
  return { code: status, stdout, stderr };
}

/** The same on {@link testDay} with few weather years, which is quicker. */
export function neckfallQuick(...args: string[]): Run {
  return neckfall(...args, '--today', testDay, '--years', '3');
}
