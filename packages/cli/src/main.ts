import { run } from './run.ts';

// All output is flushed by now; nothing left open may keep the process waiting.
process.exit(await run(process.argv.slice(2)));
