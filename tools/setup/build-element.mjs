import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import * as esbuild from 'esbuild';
import { elementWords } from './element-words.mjs';
import { root } from './steps.mjs';

const source = join(root, 'packages', 'element', 'src', 'neckfall-year-line.ts');
export const elementFile = join(root, 'packages', 'element', 'dist', 'neckfall-year-line.js');

/** Builds the custom element to one file that a page loads as a module; `options` are added to those of esbuild. */
export async function buildElement(options = {}) {
  const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
  return esbuild.build({
    entryPoints: [source],
    outfile: elementFile,
    bundle: true,
    minify: true,
    format: 'esm',
    target: 'es2022',
    jsx: 'automatic',
    jsxImportSource: 'preact',
    mainFields: ['module', 'main'],
    legalComments: 'none',
    banner: { js: `/* Neckfall ${version}, MIT; with libraries of its NOTICE */` },
    logLevel: 'warning',
    plugins: [elementWords()],
    ...options,
  });
}
