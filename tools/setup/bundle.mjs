import { mkdirSync, renameSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import * as esbuild from 'esbuild';
import { root } from './steps.mjs';

const source = join(root, 'packages', 'cli', 'src');
const target = join(root, 'packages', 'cli', 'dist');

/** The command line, what it writes sheets with, and the demo, bundled as `options` of esbuild ask. */
export function bundled(options) {
  return esbuild.build({
    entryPoints: {
      neckfall: join(source, 'main.ts'),
      demo: join(source, 'demo.ts'),
      'write-sheet': join(source, 'print', 'write-sheet.ts'),
    },
    outdir: target,
    outExtension: { '.js': '.mjs' },
    bundle: true,
    minify: true,
    platform: 'node',
    // some packages have their modules beside an older form that no bundle can follow
    mainFields: ['module', 'main'],
    target: 'node20',
    format: 'esm',
    legalComments: 'none',
    logLevel: 'warning',
    // packages in the CommonJS form ask for require()
    banner: { js: "import{createRequire as _cr}from'node:module';const require=_cr(import.meta.url);" },
    plugins: [apart],
    ...options,
  });
}

/** What only sheets need is a file beside the program, read when the first is written: every other command starts without it. */
const apart = {
  name: 'apart',
  setup(build) {
    build.onResolve({ filter: /\/write-sheet\.ts$/ }, ({ kind }) =>
      kind === 'dynamic-import' ? { path: './write-sheet.mjs', external: true } : null,
    );
    // unpacks a kind of typeface that none of ours is, with a dictionary larger than all the rest
    build.onResolve({ filter: /^brotli\/decompress\.js$/ }, () => ({ path: 'none', namespace: 'none' }));
    build.onLoad({ filter: /.*/, namespace: 'none' }, () => ({ contents: 'export default null' }));
  },
};

/** Bundles them to packages/cli/dist; returns the bytes written. */
export async function bundle() {
  const { outputFiles } = await bundled({ write: false });
  mkdirSync(target, { recursive: true });
  for (const file of outputFiles) {
    // whole or not at all: tests may be running the old one
    const draft = join(target, `.${basename(file.path)}.${process.pid}`);
    writeFileSync(draft, file.contents);
    renameSync(draft, file.path);
  }
  return outputFiles.reduce((sum, file) => sum + file.contents.length, 0);
}
