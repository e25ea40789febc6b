import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

export const program = fileURLToPath(new URL('../bin/neckfall.mjs', import.meta.url));

export type Run = { code: number | null; stdout: string; stderr: string };

/** The day on which the tests take place. */
export const testDay = '2027-05-03';

/**
 * An answer takes a second of the processor, but on a crowded machine one was seen ready to run and not let run for
 * more than a minute. vitest cannot end what blocks it, so a process that never ends is ended here.
 */
const longestMs = 180_000;

/** Runs the built command line as a process of its own. */
export function neckfall(...args: string[]): Run {
  const { status, stdout, stderr, error } = spawnSync(process.execPath, [program, ...args], {
    encoding: 'utf8',
    maxBuffer: 1 << 26,
    timeout: longestMs,
    env: { ...process.env, NO_COLOR: '1' },
  });
  if (error) throw error;
  return { code: status, stdout, stderr };
}

/** The same on {@link testDay} with few weather years, which is quicker. */
export function neckfallQuick(...args: string[]): Run {
  return neckfall(...args, '--today', testDay, '--years', '3');
}
