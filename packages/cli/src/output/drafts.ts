import { createHash, randomBytes } from 'node:crypto';
import { readdirSync, statSync, unlinkSync } from 'node:fs';
import { hostname } from 'node:os';
import { basename, dirname, join } from 'node:path';

/** A draft older than this has been forgotten, whatever process has its number now. */
const longestMs = 86_400_000;
const ending = /^([0-9a-f]+)-(\d+)-[0-9a-f]+\.tmp$/;

/** Drafts of this process that are being written. */
const open = new Set<string>();

/**
 * Where to write before `target` is replaced, a name that nothing else has. Short and plain whatever the target is
 * called, so that it is never too long. It says which process of which machine it belongs to.
 */
export function draftFor(target: string, pid = process.pid, host = hostname()): string {
  const unlike = randomBytes(6).toString('hex');
  return join(dirname(target), `${headOf(target)}${digest(host)}-${pid}-${unlike}.tmp`);
}

export function takeUp(draft: string): void {
  open.add(draft);
}

export function layDown(draft: string): void {
  open.delete(draft);
}

/** Removes the drafts of `target` that killed runs left behind. */
export function clearDrafts(target: string): void {
  const head = headOf(target);
  for (const name of namesIn(dirname(target))) {
    if (!name.startsWith(head)) continue;
    const draft = join(dirname(target), name);
    const [, host, pid] = ending.exec(name.slice(head.length)) ?? [];
    if (pid !== undefined && !isLive(draft, host, Number(pid))) removeIfThere(draft);
  }
}

/** A draft that is being written is younger, ms; one that lies longer holds nobody up. */
const writingMs = 10_000;

/**
 * Whether no other process is about to replace `target`. Each lays its draft down before it asks, so that of two at once
 * at least one sees the other. Drafts are dated by the clock of their folder.
 */
export function isAlone(target: string, draft: string): boolean {
  const head = headOf(target);
  const now = writtenMs(draft);
  return namesIn(dirname(target)).every((name) => {
    const other = join(dirname(target), name);
    const [, host, pid] = name.startsWith(head) ? (ending.exec(name.slice(head.length)) ?? []) : [];
    if (pid === undefined || other === draft) return true;
    return Math.abs(now - writtenMs(other)) > writingMs || !isLive(other, host, Number(pid));
  });
}

export function removeIfThere(path: string): void {
  try {
    unlinkSync(path);
  } catch {}
}

function isLive(draft: string, host: string, pid: number): boolean {
  if (open.has(draft)) return true;
  const age = Date.now() - writtenMs(draft);
  if (age > longestMs) return false;
  // of processes elsewhere nothing is known here
  if (host !== digest(hostname())) return true;
  return pid !== process.pid && isRunning(pid);
}

/** 0 where it is gone. */
function writtenMs(draft: string): number {
  return statSync(draft, { throwIfNoEntry: false })?.mtimeMs ?? 0;
}

function isRunning(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    // another user's process lives too
    return (error as NodeJS.ErrnoException).code === 'EPERM';
  }
}

function headOf(target: string): string {
  return `.neckfall-${digest(basename(target))}-`;
}

function digest(text: string): string {
  return createHash('sha256').update(text).digest('hex').slice(0, 12);
}

function namesIn(folder: string): string[] {
  try {
    return readdirSync(folder);
  } catch {
    // it may be written to and not listed
    return [];
  }
}
