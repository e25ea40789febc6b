// npm run build: everything that must exist before the command line runs, and the app's files.
import { copyFileSync, mkdirSync } from 'node:fs';
import { basename, join } from 'node:path';
import { build, installIfNeeded, requireNode } from './steps.mjs';

requireNode();
installIfNeeded();
const bytes = await build();
const { appFolder, buildApp } = await import('./build-app.mjs');
await buildApp();
const { buildElement, elementFile } = await import('./build-element.mjs');
await buildElement();
// beside the app, for pages of the same host; it is no part of what the app keeps for offline use
const served = join(appFolder, 'element');
mkdirSync(served, { recursive: true });
copyFileSync(elementFile, join(served, basename(elementFile)));
process.stderr.write(
  `Built packages/cli/dist (${Math.round(bytes / 1024)} kB), packages/app/dist and packages/element/dist.\n`,
);
