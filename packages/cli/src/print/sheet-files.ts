import { closeSync, existsSync, mkdirSync, openSync, readSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { refusing } from '../output/out-refusal.ts';
import { wholeFile } from '../output/whole-file.ts';
import { refuse } from '../refusal/refusal.ts';
import type { SheetForm } from './sheet-forms.ts';

/** By what a sheet of ours is known. */
const marks: Record<SheetForm, string> = {
  html: '<meta name="generator" content="Neckfall">',
  pdf: '/Producer (Neckfall)',
};

/** Refuses a folder that is a file. */
export function refuseFile(path: string): void {
  const found = refusing(path, () => statSync(path, { throwIfNoEntry: false }));
  if (found && !found.isDirectory())
    throw refuse('sheet-not-folder', { field: '--out', exit: 3, values: { value: path } });
}

/**
 * Writes the files of a sheet, each whole or not at all; what is there already and is no sheet is left as it is. The folder
 * is made where it is not there yet; the one that holds it has to be.
 */
export function writeSheetFiles(
  folder: string,
  name: string,
  files: readonly { form: SheetForm; bytes: Uint8Array }[],
): void {
  if (!existsSync(folder)) refusing(folder, () => mkdirSync(folder));
  const paths = files.map(({ form }) => join(folder, `${name}.${form}`));
  for (const [at, path] of paths.entries()) {
    if (!isOurs(path, files[at].form)) throw refuse('sheet-other-file', { values: { value: path } });
  }
  for (const [at, path] of paths.entries()) writeWhole(path, files[at].bytes);
}

export function writeWhole(path: string, bytes: Uint8Array): void {
  const file = wholeFile(path);
  file.write(bytes);
  file.keep();
}

function isOurs(path: string, form: SheetForm): boolean {
  const found = refusing(path, () => statSync(path, { throwIfNoEntry: false }));
  if (!found) return true;
  if (!found.isFile()) return false;
  const handle = refusing(path, () => openSync(path, 'r'));
  try {
    const bytes = Buffer.alloc(found.size);
    const length = readSync(handle, bytes, 0, bytes.length, 0);
    return bytes.subarray(0, length).includes(marks[form]);
  } finally {
    closeSync(handle);
  }
}
