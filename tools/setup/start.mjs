// npm start: from a fresh clone to the plan for the demo garden, and the app on this machine. `--plan-only` ends after the plan.
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build, installIfNeeded, requireNode, root, show } from './steps.mjs';

const usualPort = 5270;

requireNode();
installIfNeeded();
await build();
const args = process.argv.slice(2);
const isPlanOnly = args.includes('--plan-only');
const exitCode = show(process.execPath, [
  join(root, 'packages', 'cli', 'dist', 'demo.mjs'),
  ...args.filter((arg) => arg !== '--plan-only'),
]);
process.exitCode = exitCode;
if (exitCode === 0 && !isPlanOnly) await serveApp();

async function serveApp() {
  const tool = (name) => import(pathToFileURL(join(root, 'tools', 'setup', name)).href);
  const { appFolder, buildApp } = await tool('build-app.mjs');
  const { serve } = await tool('serve-app.mjs');
  await buildApp();
  // a port in use is no reason to stop: any other will do
  const { url } = await serve(appFolder, usualPort).catch(() => serve(appFolder));
  process.stdout.write(`\nThe app is at ${url} (on this machine only). Ctrl-C ends it.\n`);
}
