import { dirname } from 'node:path';
import { refuse } from '../refusal/refusal.ts';

/** Does some work on the file of `--out`, or of another field; an error of the file system is refused in its words. */
export function refusing<Result>(path: string, work: () => Result, field = '--out'): Result {
  try {
    return work();
  } catch (error) {
    throw outRefusal(path, error, field);
  }
}

function outRefusal(path: string, error: unknown, field: string): unknown {
  const code = (error as NodeJS.ErrnoException).code;
  if (code === undefined) return error;
  const details = { field, exit: 3, cause: error } as const;
  const values = { value: path, reason: code, folder: dirname(path) };
  if (code === 'ENOENT' || code === 'ENOTDIR') return refuse('out-folder', { ...details, values });
  if (code === 'EACCES' || code === 'EPERM' || code === 'EROFS')
    return refuse('out-read-only', { ...details, values });
  if (code === 'ENOSPC' || code === 'EDQUOT') return refuse('out-full', { ...details, values });
  return refuse('out-failed', { ...details, values });
}
