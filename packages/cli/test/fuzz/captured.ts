import { run } from '../../src/run.ts';

export type Captured = { code: number; stdout: string; stderr: string };

/** Runs one command line in this process, its output kept. One at a time: the streams are the process's own. */
export async function captured(args: readonly string[]): Promise<Captured> {
  const seen = { stdout: '', stderr: '' };
  const restore = (['stdout', 'stderr'] as const).map((name) => {
    const stream = process[name];
    const { write } = stream;
    stream.write = ((text: string, done?: unknown) => {
      seen[name] += text;
      if (typeof done === 'function') done();
      return true;
    }) as typeof write;
    return () => {
      stream.write = write;
    };
  });
  try {
    return { code: await run(args), ...seen };
  } finally {
    for (const put of restore) put();
  }
}
