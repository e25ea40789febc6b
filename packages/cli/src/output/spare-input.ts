import { fstatSync, statSync } from 'node:fs';
import { refuse } from '../refusal/refusal.ts';

const inputs = ['garden', 'batch', 'weather'] as const;

type RawFiles = { out?: string } & { [Input in (typeof inputs)[number]]?: string | string[] };

/**
 * Refuses an `--out` that is a file being read, by whatever name or link.
 *
 * @param files those named without an option
 */
export function spareInput(raw: RawFiles, files: readonly string[] = []): void {
  const { out } = raw;
  const written = out === undefined ? null : fileAt(out);
  if (written === null) return;
  const named = inputs.flatMap((input) =>
    [raw[input] ?? []].flat().map((path) => ({ field: `--${input}`, path })),
  );
  for (const { field, path } of [...named, ...files.map((path) => ({ field: path, path }))]) {
    const read = field === '--batch' && path === '-' ? fileAt(0) : fileAt(path);
    if (read === null || read.ino !== written.ino || read.dev !== written.dev) continue;
    if (field === path) throw refuse('out-is-file', { exit: 3, values: { value: String(out) } });
    throw refuse('out-is-input', { field, exit: 3, values: { value: String(out) } });
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
