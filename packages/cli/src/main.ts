import { isMainThread } from 'node:worker_threads';
import { serveBatch } from './batch/serve.ts';
import { run } from './run.ts';

// All output is flushed by now; nothing left open may keep the process waiting.
if (isMainThread) process.exit(await run(process.argv.slice(2)));
else serveBatch();
