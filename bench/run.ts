// npm run bench: how fast, how large, against what was promised. No test: figures depend on the machine and its load.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { cpus, loadavg, tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { batchRows } from './batch.ts';
import { processRows } from './processes.ts';
import type { Row } from './timing.ts';

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));

/** The daily loop in C, compiled into `folder`; null, and said so, where there is no compiler. */
function growInC(folder: string): string | null {
  const program = join(folder, 'grow');
  const { error, status, stderr } = spawnSync('cc', ['-O3', '-o', program, here('./grow.c'), '-lm'], {
    encoding: 'utf8',
  });
  if (error) {
    process.stderr.write('No C compiler (cc) here: the daily loop is not measured against C.\n');
    return null;
  }
  if (status !== 0) throw new Error(`grow.c could not be compiled: ${stderr}`);
  return program;
}

/** Measured as it is shipped, bundled: a loader that compiles each file as it goes makes code some three times slower. */
async function inProcess(): Promise<{ calibration: number; rows: Row[] }> {
  const folder = mkdtempSync(join(tmpdir(), 'neckfall-bench-'));
  try {
    const outfile = join(folder, 'in-process.mjs');
    await build({
      entryPoints: [here('./in-process.ts')],
      outfile,
      bundle: true,
      minify: true,
      platform: 'node',
      target: 'node20',
      format: 'esm',
      logLevel: 'warning',
    });
    const { status, stdout, stderr } = spawnSync(
      process.execPath,
      [outfile, here('../packages/data/assets'), folder, growInC(folder) ?? ''],
      { encoding: 'utf8' },
    );
    if (status !== 0) throw new Error(`the benchmark ended with ${status}: ${stderr}`);
    return JSON.parse(stdout) as { calibration: number; rows: Row[] };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Apart, since it is written for a world with pages in it. */
function appRows(): Row[] {
  const { status, stdout, stderr } = spawnSync(process.execPath, ['--import', 'tsx', here('./app.ts')], {
    encoding: 'utf8',
  });
  if (status !== 0) throw new Error(`the app's benchmark ended with ${status}: ${stderr}`);
  return JSON.parse(stdout) as Row[];
}

const msOf: Record<string, number> = { s: 1000, ms: 1, µs: 0.001 };

function line({ what, value, unit, limit }: Row, calibration: number): string {
  const ms = msOf[unit];
  const ratio = ms === undefined ? '' : ((value * ms) / calibration).toPrecision(3);
  const promise = limit === null ? '' : `≤ ${limit}${value <= limit ? '' : '  missed'}`;
  return [what.padEnd(46), value.toPrecision(3).padStart(8), unit.padEnd(3), ratio.padStart(9), promise].join(
    '  ',
  );
}

const built = spawnSync(process.execPath, [here('../tools/setup/build.mjs')], { stdio: 'inherit' });
if (built.status !== 0) throw new Error('the command line could not be built');
const { calibration, rows } = await inProcess();
const program = here('../packages/cli/bin/neckfall.mjs');
rows.push(...processRows(program), ...batchRows(program), ...appRows());
const [{ model }] = cpus();
process.stdout.write(
  `${model.trim()}, ${cpus().length} cores, load ${loadavg()[0].toFixed(1)}, Node ${process.version}\n` +
    `Calibration loop (1 million steps): ${calibration.toFixed(2)} ms; the ratio column is in units of it.\n\n` +
    `${rows.map((row) => line(row, calibration)).join('\n')}\n`,
);
