import { mkdirSync, renameSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import * as esbuild from 'esbuild';
import { root } from './steps.mjs';

const source = join(root, 'packages', 'cli', 'src');
const target = join(root, 'packages', 'cli', 'dist');

/** What makes images of drawings is large: a file of its own, read by the one command that needs it. */
const rasteriser = 'png-of-svg-text';
const apart = {
  name: 'apart',
  setup(build) {
    build.onResolve({ filter: /\/png-of-svg-text\.ts$/ }, ({ kind }) =>
      kind === 'dynamic-import' ? { path: `./${rasteriser}.mjs`, external: true } : undefined,
    );
  },
};

/** The command line and the demo, bundled as `options` of esbuild ask. */
export function bundled(options) {
  return esbuild.build({
    entryPoints: {
      neckfall: join(source, 'main.ts'),
      demo: join(source, 'demo.ts'),
      [rasteriser]: join(source, 'raster', `${rasteriser}.ts`),
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
