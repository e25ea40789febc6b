import { mkdtempSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type GrowingPart, growPart } from './part-file.ts';
import type { AtlasSettings } from './settings.ts';

/**
 * Does some work on the part of a map: beside the file that the map is for, where a run that was stopped has left it, and
 * gone once the work is done; of a map that is printed or goes into a pipe, in a folder that goes in any case.
 */
export async function withPart(
  out: string | undefined,
  settings: AtlasSettings,
  work: (part: GrowingPart, path: string) => Promise<void>,
): Promise<void> {
  const folder = out === undefined || !isPlain(out) ? mkdtempSync(join(tmpdir(), 'neckfall-atlas-')) : null;
  const clear = () => void (folder && rmSync(folder, { recursive: true, force: true }));
  process.on('exit', clear);
  const path = folder ? join(folder, 'map.part') : `${out}.part`;
  const part = growPart(path, settings);
  try {
    await work(part, path);
  } finally {
    part.close();
    process.off('exit', clear);
    clear();
  }
  rmSync(path, { force: true });
}

/** Whether a file stands there, or can: a device or a pipe keeps nothing beside it. */
function isPlain(path: string): boolean {
  return statSync(path, { throwIfNoEntry: false })?.isFile() ?? true;
}
