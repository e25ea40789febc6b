import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { buildApp } from './build-app.mjs';

/** Tests of the app open today's code, from a folder of this run's own. */
export async function setup({ provide }) {
  const folder = mkdtempSync(join(tmpdir(), 'neckfall-app-'));
  await buildApp(folder);
  provide('appFolder', folder);
  return () => rmSync(folder, { recursive: true, force: true });
}
