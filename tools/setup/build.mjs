// npm run build: everything that must exist before the command line runs.
import { build, installIfNeeded, requireNode } from './steps.mjs';

requireNode();
installIfNeeded();
const bytes = await build();
process.stderr.write(`Built packages/cli/dist (${Math.round(bytes / 1024)} kB).\n`);
