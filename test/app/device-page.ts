import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { type App, openApp } from './open-app.ts';

/** A page that does nothing by itself and has what the app keeps on the device, to be asked by a test. */
export async function openDevicePages(): Promise<App> {
  const folder = mkdtempSync(join(tmpdir(), 'neckfall-device-'));
  await build({
    entryPoints: [fileURLToPath(new URL('./device-entry.ts', import.meta.url))],
    outfile: join(folder, 'entry.js'),
    bundle: true,
    format: 'esm',
    target: 'es2022',
    logLevel: 'warning',
  });
  writeFileSync(
    join(folder, 'index.html'),
    '<!doctype html><link rel="icon" href="data:,"><script type="module" src="entry.js"></script><main><h1>Device</h1></main>',
  );
  const app = await openApp(folder);
  const close = async () => {
    await app.close();
    rmSync(folder, { recursive: true, force: true });
  };
  return { ...app, close };
}
