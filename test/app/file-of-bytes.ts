import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';

/** Path of a file of so many bytes all alike, there till the test ends: handed over as bytes it would take a browser half a minute. */
export function fileOfBytes(name: string, bytes: number, byte: string): string {
  const folder = mkdtempSync(join(tmpdir(), 'neckfall-large-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  const path = join(folder, name);
  writeFileSync(path, Buffer.alloc(bytes, byte));
  return path;
}
