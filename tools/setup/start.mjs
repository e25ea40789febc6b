// npm start: from a fresh clone to the plan for the demo garden.
import { join } from 'node:path';
import { build, installIfNeeded, requireNode, root, show } from './steps.mjs';

requireNode();
installIfNeeded();
await build();
process.exitCode = show(process.execPath, [
  join(root, 'packages', 'cli', 'dist', 'demo.mjs'),
  ...process.argv.slice(2),
]);
