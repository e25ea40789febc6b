import { fstatSync, statSync } from 'node:fs';
import { refuse } from '../refusal/refusal.ts';

const inputs = ['garden', 'batch', 'weather'] as const;

type RawFiles = { out?: string } & { [Input in (typeof inputs)[number]]?: string };

/** Refuses an `--out` that is a file being read, by whatever name or link. */
export function spareInput(raw: RawFiles): void {
  const { out } = raw;
  const written = out === undefined ? null : fileAt(out);
  if (written === null) return;
  for (const input of inputs) {
    const path = raw[input];
    if (path === undefined) continue;
    const read = input === 'batch' && path === '-' ? fileAt(0) : fileAt(path);
    if (read === null || read.ino !== written.ino || read.dev !== written.dev) continue;
    throw refuse('out-is-input', { field: `--${input}`, exit: 3, values: { value: String(out) } });
  }
}

/** The file of a path or handle; null for anything else, which is met where it is opened. */
function fileAt(where: string | 0) {
  try {
    const stats = where === 0 ? fstatSync(where, { bigint: true }) : statSync(where, { bigint: true });
    return stats.isFile() ? stats : null;
  } catch {
    return null;
  }
}
