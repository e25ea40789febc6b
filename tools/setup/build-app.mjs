import { createHash } from 'node:crypto';
import { copyFileSync, readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import * as esbuild from 'esbuild';
import { build } from 'vite';
import { root } from './steps.mjs';

const app = join(root, 'packages', 'app');
export const appFolder = join(app, 'dist');

/** Large, and not needed for the first answer: kept for offline use once nothing else is to do. */
const kept = /towns-small|land-outline|language-/;

/** Builds the app to a folder with the service worker that keeps it; returns the names of its files. `options` are added to those of the build. */
export async function buildApp(folder = appFolder, options = {}) {
  // a test run names itself here, and would get what developers get
  const { NODE_ENV } = process.env;
  process.env.NODE_ENV = 'production';
  await build({
    root: app,
    configFile: join(app, 'vite.config.ts'),
    logLevel: 'warn',
    build: { outDir: folder, emptyOutDir: true, ...options },
  });
  // the licences ask to travel with what they cover
  for (const name of ['NOTICE', 'LICENSE']) copyFileSync(join(root, name), join(folder, `${name}.txt`));
  if (NODE_ENV === undefined) delete process.env.NODE_ENV;
  else process.env.NODE_ENV = NODE_ENV;
  const files = filesOf(folder).filter((file) => file !== 'service-worker.js');
  const mark = createHash('sha256');
  for (const file of files) mark.update(file).update(readFileSync(join(folder, file)));
  // the page itself under the address it is asked for
  const names = files.map((file) => (file === 'index.html' ? './' : file));
  await esbuild.build({
    entryPoints: [join(app, 'src', 'offline', 'service-worker.ts')],
    outfile: join(folder, 'service-worker.js'),
    bundle: true,
    minify: true,
    format: 'iife',
    target: 'es2022',
    logLevel: 'warning',
    define: {
      version: JSON.stringify(mark.digest('hex').slice(0, 12)),
      firstFiles: JSON.stringify(names.filter((name) => !kept.test(name))),
      otherFiles: JSON.stringify(names.filter((name) => kept.test(name))),
    },
  });
  return [...files, 'service-worker.js'];
}

function filesOf(folder) {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).split(sep).join('/'))
    .sort();
}
