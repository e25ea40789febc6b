// Before and after npm pack of a package of the library, run by npm in the package's folder: what is packed is there
// for that time only, so that nothing in the workspace can run on an old build.
import { copyFileSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { buildLibrary } from './build-library.mjs';
import { root } from './steps.mjs';

const folder = process.cwd();
const name = basename(folder);

if (process.argv[2] === 'before') {
  buildLibrary(name);
  copyFileSync(join(root, 'LICENSE'), join(folder, 'LICENSE'));
  if (name === 'data') writeFileSync(join(folder, 'NOTICE'), dataNotice());
} else {
  for (const made of ['dist', 'LICENSE', 'NOTICE'])
    rmSync(join(folder, made), { recursive: true, force: true });
}

/** What NOTICE says of the data, and the licence that is printed nowhere else. */
function dataNotice() {
  const notice = readFileSync(join(root, 'NOTICE'), 'utf8');
  const data = /\nDATA\n[\s\S]*?\n\n\n/.exec(notice);
  const isc = /\nThe ISC License \(world-atlas\):\n[\s\S]*?\n\n\n/.exec(notice);
  if (!data || !isc) throw new Error('NOTICE: no section DATA, or no ISC License');
  const head = 'Neckfall\nCopyright (c) 2026 The Neckfall authors. MIT License, see LICENSE.\n\n';
  return `${head}${data[0].replaceAll('packages/data/', '').trimEnd()}\n${isc[0].trimEnd()}\n`;
}
