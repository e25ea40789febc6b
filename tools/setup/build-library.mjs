import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { basename, dirname, join, relative } from 'node:path';
import ts from 'typescript';
import { root } from './steps.mjs';

/**
 * Compiles one package to a folder, a module a file, with types, without maps. Packages below it are read from their
 * sources, so none has to be built before. Throws with the messages of the compiler.
 */
export function buildLibrary(name, folder = join(root, 'packages', name, 'dist')) {
  const source = join(root, 'packages', name, 'src');
  const manifest = JSON.parse(readFileSync(join(root, 'packages', name, 'package.json'), 'utf8'));
  const doors = Object.values(manifest.exports).map(({ default: file }) =>
    join(source, relative('dist', file).replace(/\.js$/, '.ts')),
  );
  const program = ts.createProgram(doors, {
    ...settings(),
    rootDir: join(root, 'packages'),
    noEmit: false,
    declaration: true,
    // npm run types is for that: here it would take longer than all else
    noCheck: true,
    allowImportingTsExtensions: false,
    rewriteRelativeImportExtensions: true,
  });
  rmSync(folder, { recursive: true, force: true });
  const { diagnostics } = program.emit(undefined, (written, text, _, __, from) => {
    const path = relative(source, from[0].fileName);
    if (path.startsWith('..')) return;
    const target = join(folder, dirname(path), basename(written));
    mkdirSync(dirname(target), { recursive: true });
    writeFileSync(target, written.endsWith('.d.ts') ? withBuiltNames(text) : text);
  });
  const wrong = [...program.getSyntacticDiagnostics(), ...diagnostics];
  if (wrong.length > 0) throw new Error(ts.formatDiagnostics(wrong, host));
}

/** In types the compiler leaves the names of re-exported modules as they are in the sources. */
const withBuiltNames = (text) =>
  text.replace(/(from |import\()(['"])(\.{1,2}\/[^'"]+)\.ts\2/g, '$1$2$3.js$2');

const host = {
  getCanonicalFileName: (name) => name,
  getCurrentDirectory: () => root,
  getNewLine: () => '\n',
};

function settings() {
  const { config } = ts.readConfigFile(join(root, 'tsconfig.json'), ts.sys.readFile);
  // only its settings: the files are those that the doors lead to
  return ts.parseJsonConfigFileContent({ ...config, files: [], include: [] }, ts.sys, root).options;
}
