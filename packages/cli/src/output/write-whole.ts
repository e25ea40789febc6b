import {
  closeSync,
  fsyncSync,
  openSync,
  realpathSync,
  renameSync,
  statSync,
  unlinkSync,
  writeSync,
} from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { refuse } from '../refusal.ts';

/**
 * Writes a file whole or not at all: temporary file in the same folder, fsync, rename.
 * A device or pipe (`/dev/stdout`) cannot be replaced, so it is written to as it is.
 */
export function writeWhole(path: string, text: string): void {
  try {
    const stats = statSync(path, { throwIfNoEntry: false });
    const target = stats ? realpathSync(path) : path;
    if (stats?.isDirectory())
      throw refuse('out-is-folder', { field: '--out', values: { value: path }, exit: 3 });
    if (stats && !stats.isFile()) writeTo(target, 'w', text);
    else replace(target, text);
  } catch (error) {
    throw fileRefusal(path, error);
  }
}

function replace(target: string, text: string): void {
  const draft = join(dirname(target), `.${basename(target)}.${process.pid}.tmp`);
  try {
    writeTo(draft, 'wx', text);
    renameSync(draft, target);
  } catch (error) {
    removeIfThere(draft);
    throw error;
  }
  syncFolder(dirname(target));
}

function writeTo(path: string, flag: 'w' | 'wx', text: string): void {
  const file = openSync(path, flag);
  try {
    const bytes = Buffer.from(text);
    let written = 0;
    while (written < bytes.length) written += writeSync(file, bytes, written);
    if (flag === 'wx') fsyncSync(file);
  } finally {
    closeSync(file);
  }
}

/** Makes the rename itself last; some systems cannot open folders. */
function syncFolder(folder: string): void {
  try {
    const handle = openSync(folder, 'r');
    try {
      fsyncSync(handle);
    } finally {
      closeSync(handle);
    }
  } catch {}
}

function removeIfThere(path: string): void {
  try {
    unlinkSync(path);
  } catch {}
}

function fileRefusal(path: string, error: unknown): unknown {
  const code = (error as NodeJS.ErrnoException).code;
  if (code === undefined) return error;
  const details = { field: '--out', exit: 3, cause: error } as const;
  const values = { value: path, reason: code, folder: dirname(path) };
  if (code === 'ENOENT' || code === 'ENOTDIR') return refuse('out-folder', { ...details, values });
  if (code === 'EACCES' || code === 'EPERM' || code === 'EROFS')
    return refuse('out-read-only', { ...details, values });
  if (code === 'ENOSPC' || code === 'EDQUOT') return refuse('out-full', { ...details, values });
  return refuse('out-failed', { ...details, values });
}
