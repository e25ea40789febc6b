import { spawn } from 'node:child_process';
import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import type { FoldFile } from './fold-values.ts';
import { foldCount } from './folds.ts';

const script = fileURLToPath(new URL('./fit-fold.ts', import.meta.url));

/** Folds are searched for this share of the generations: they tell how well a fit does on what it never saw. */
const share = 0.6;

/** Fits all ten folds, as many at a time as there are processors. */
export async function fitFolds(path: string, ofFit: number, seed: number): Promise<FoldFile> {
  const generations = Math.ceil(share * ofFit);
  const folds: Record<string, number>[] = [];
  let next = 0;
  const worker = async () => {
    while (next < foldCount) {
      const fold = next++;
      folds[fold] = JSON.parse(await run([path, `${fold}`, `${generations}`, `${seed}`])) as Record<
        string,
        number
      >;
      process.stderr.write(`fold ${fold} done\n`);
    }
  };
  await Promise.all(Array.from({ length: availableParallelism() }, worker));
  return { generations, seed, folds };
}

function run(args: string[]): Promise<string> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, ['--import', 'tsx', script, ...args], {
      stdio: ['ignore', 'pipe', 'inherit'],
    });
    let out = '';
    child.stdout.on('data', (chunk: Buffer) => {
      out += chunk;
    });
    child.on('error', reject);
    child.on('close', (code) => (code === 0 ? resolve(out) : reject(new Error(`fold ended with ${code}`))));
  });
}
