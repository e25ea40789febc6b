import { isMainThread, workerData } from 'node:worker_threads';
import { loadLater } from '@neckfall/words';
import { serveTiles } from './atlas/serve-tiles.ts';
import { serveBatch } from './batch/serve.ts';
import { serveGrow } from './grow/serve-grow.ts';
import { heedSignals } from './heed-signals.ts';
import { run } from './run.ts';

if (isMainThread) {
  heedSignals();
  // All output is flushed by then; nothing left open may keep the process waiting.
  process.exit(await run(process.argv.slice(2)));
}
await loadLater();
if ('grow' in workerData) serveGrow();
else if ('tiles' in workerData) serveTiles();
else await serveBatch();
