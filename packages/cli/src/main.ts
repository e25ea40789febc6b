import { isMainThread } from 'node:worker_threads';
import { serveBatch } from './batch/serve.ts';
import { heedSignals } from './heed-signals.ts';
import { run } from './run.ts';

if (isMainThread) {
  heedSignals();
  // All output is flushed by then; nothing left open may keep the process waiting.
  process.exit(await run(process.argv.slice(2)));
}
serveBatch();
