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
  for (const input of inputs) {
    for (const path of [raw[input] ?? []].flat())
      spareFile(raw.out, input === 'batch' && path === '-' ? 0 : path, `--${input}`);
  }
  for (const path of files) spareFile(raw.out, path, null);
}

/**
 * The same for one file.
 *
 * @param field what named it on the command line; null: itself
 * @param option what names the file to be written
 */
export function spareFile(
  out: string | undefined,
  path: string | 0,
  field: string | null,
  option = '--out',
): void {
  const written = out === undefined ? null : fileAt(out);
  const read = written && fileAt(path);
  if (!written || !read || read.ino !== written.ino || read.dev !== written.dev) return;
  const values = { value: String(out), option };
  throw field === null
    ? refuse('out-is-file', { exit: 3, values })
    : refuse('out-is-input', { field, exit: 3, values });
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
