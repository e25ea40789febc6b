import { renameSync, writeFileSync } from 'node:fs';

/** Writes a file whole or not at all. */
export function writeWhole(path: string, text: string): void {
  writeFileSync(`${path}.new`, text);
  renameSync(`${path}.new`, path);
}
