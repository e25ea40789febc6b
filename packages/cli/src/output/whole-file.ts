import {
  accessSync,
  closeSync,
  constants,
  fchmodSync,
  fchownSync,
  fstatSync,
  fsyncSync,
  lstatSync,
  openSync,
  readlinkSync,
  realpathSync,
  renameSync,
  type Stats,
  statSync,
  writeSync,
} from 'node:fs';
import { basename, dirname, join, resolve } from 'node:path';
import { refuse } from '../refusal/refusal.ts';
import { clearDrafts, draftFor, isAlone, layDown, removeIfThere, takeUp } from './drafts.ts';
import { refusing } from './out-refusal.ts';

/** A file in the making: nothing is seen of it until it is kept. */
export type WholeFile = {
  write(content: string | Uint8Array): void;
  /** @param last looks at what is there just before it is replaced; where it throws, all stays as it was */
  keep(last?: () => void): void;
  /** Whether no other process is about to replace the file: who comes later sees this one's draft, or what it made. */
  isAlone(): boolean;
  /** Leaves everything as it was. */
  drop(): void;
};

/**
 * A file that appears whole or not at all: a draft in the same folder, fsync, rename. The draft is dropped when a
 * write fails and when the process ends before it is kept; what a killed process left is cleared by the next write.
 * A link is written through, and a file that was there hands on its mode and owner.
 */
export function wholeFile(path: string, field = '--out'): WholeFile {
  const { target, draft, file } = refusing(path, () => openDraft(path, field), field);
  let isOpen = true;
  let isSettled = false;
  const close = () => {
    if (isOpen) closeSync(file);
    isOpen = false;
  };
  const settle = () => {
    isSettled = true;
    layDown(draft);
    process.off('exit', drop);
  };
  const drop = () => {
    if (isSettled) return;
    settle();
    close();
    removeIfThere(draft);
  };
  const orDrop = (work: () => void) => {
    try {
      refusing(path, work, field);
    } catch (refusal) {
      drop();
      throw refusal;
    }
  };
  process.on('exit', drop);
  return {
    write: (content) => orDrop(() => writeAll(file, content)),
    keep: (last) =>
      orDrop(() => {
        fsyncSync(file);
        close();
        last?.();
        renameSync(draft, target);
        settle();
        syncFolder(dirname(target));
      }),
    isAlone: () => isAlone(target, draft),
    drop,
  };
}

/** Writes all of a text, or of bytes, to an open file. */
export function writeAll(file: number, content: string | Uint8Array): void {
  const bytes = typeof content === 'string' ? Buffer.from(content) : content;
  let written = 0;
  while (written < bytes.length) written += writeSync(file, bytes, written);
}

function openDraft(path: string, field: string): { target: string; draft: string; file: number } {
  const older = statSync(path, { throwIfNoEntry: false });
  if (older?.isDirectory() || /^$|[/\\]$/.test(path)) {
    throw refuse('out-is-folder', { field, values: { value: path }, exit: 3 });
  }
  const target = endOf(path);
  // a rename would not ask
  if (older) accessSync(target, constants.W_OK);
  clearDrafts(target);
  const draft = draftFor(target);
  takeUp(draft);
  const file = openSync(draft, 'wx', older?.mode);
  if (older) handOn(older, file);
  return { target, draft, file };
}

/** The file that a path means: links are followed, even to a file that is not there yet. */
function endOf(path: string): string {
  const place = join(realpathSync(dirname(path)), basename(path));
  const isLink = lstatSync(place, { throwIfNoEntry: false })?.isSymbolicLink();
  return isLink ? endOf(resolve(dirname(place), readlinkSync(place))) : place;
}

function handOn({ mode, uid, gid }: Stats, file: number): void {
  const draft = fstatSync(file);
  try {
    if (draft.uid !== uid || draft.gid !== gid) fchownSync(file, uid, gid);
  } catch {
    // only some may give files away
  }
  // what the umask took away, and what a new owner did
  fchmodSync(file, mode & 0o7777);
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
