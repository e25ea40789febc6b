import { vi } from 'vitest';
import { run } from '../../packages/cli/src/run.ts';

/**
 * What the command line prints for these arguments. It runs in this process, since one of its own would begin each
 * answer cold; that the built program does the same is for its own tests.
 */
export async function neckfall(...args: string[]): Promise<string> {
  const printed = { stdout: '', stderr: '' };
  const spies = (['stdout', 'stderr'] as const).map((stream) =>
    vi.spyOn(process[stream], 'write').mockImplementation((text, ...rest: unknown[]) => {
      printed[stream] += text;
      const done = rest.at(-1);
      if (typeof done === 'function') done();
      return true;
    }),
  );
  try {
    const exitCode = await run(args);
    if (exitCode !== 0) throw new Error(`exit ${exitCode}: ${printed.stderr}`);
    return printed.stdout;
  } finally {
    for (const spy of spies) spy.mockRestore();
  }
}
