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
import { refuse } from '../refusal/refusal.ts';

/** A file in the making: nothing is seen of it until it is kept. */
export type WholeFile = {
  write(text: string): void;
  keep(): void;
  /** Leaves everything as it was. */
  drop(): void;
};

/** Writes a file whole or not at all; see {@link wholeFile}. */
export function writeWhole(path: string, text: string): void {
  const file = wholeFile(path);
  file.write(text);
  file.keep();
}

/**
 * A file that appears whole or not at all: temporary file in the same folder, fsync, rename. It is dropped when a
 * write fails and when the process ends before it is kept.
 * A device or pipe (`/dev/stdout`) cannot be replaced, so it is written to as it is.
 */
export function wholeFile(path: string): WholeFile {
  const { target, draft } = placesOf(path);
  const file = refusing(path, () => openSync(draft ?? target, draft === null ? 'w' : 'wx'));
  let isOpen = true;
  let isSettled = false;
  const close = () => {
    if (isOpen) closeSync(file);
    isOpen = false;
  };
  const settle = () => {
    isSettled = true;
    process.off('exit', drop);
  };
  const drop = () => {
    if (isSettled) return;
    settle();
    close();
    if (draft !== null) removeIfThere(draft);
  };
  const orDrop = (work: () => void) => {
    try {
      refusing(path, work);
    } catch (refusal) {
      drop();
      throw refusal;
    }
  };
  process.on('exit', drop);
  return {
    write: (text) =>
      orDrop(() => {
        const bytes = Buffer.from(text);
        let written = 0;
        while (written < bytes.length) written += writeSync(file, bytes, written);
      }),
    keep: () =>
      orDrop(() => {
        if (draft !== null) fsyncSync(file);
        close();
        if (draft !== null) {
          renameSync(draft, target);
          syncFolder(dirname(target));
        }
        settle();
      }),
    drop,
  };
}

/** Where to write, and the temporary file to write to first; null for a device. */
function placesOf(path: string): { target: string; draft: string | null } {
  return refusing(path, () => {
    const stats = statSync(path, { throwIfNoEntry: false });
    if (stats?.isDirectory())
      throw refuse('out-is-folder', { field: '--out', values: { value: path }, exit: 3 });
    const target = stats ? realpathSync(path) : path;
    if (stats && !stats.isFile()) return { target, draft: null };
    return { target, draft: join(dirname(target), `.${basename(target)}.${process.pid}.tmp`) };
  });
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

function refusing<Result>(path: string, work: () => Result): Result {
  try {
    return work();
  } catch (error) {
    throw fileRefusal(path, error);
  }
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
