// npm run build: everything that must exist before the command line runs, and the app's files.
import { build, installIfNeeded, requireNode } from './steps.mjs';

requireNode();
installIfNeeded();
const bytes = await build();
const { buildApp } = await import('./build-app.mjs');
await buildApp();
process.stderr.write(`Built packages/cli/dist (${Math.round(bytes / 1024)} kB) and packages/app/dist.\n`);
