import { constants, openSync } from 'node:fs';
import { setTimeout } from 'node:timers/promises';
import { refuse } from '../refusal/refusal.ts';
import { refusing } from './out-refusal.ts';

const everyMs = 100;
const longestS = 30;

/** Opens a named pipe for writing once somebody reads it; refuses when nobody does for half a minute. */
export async function openPipe(path: string, wait: () => Promise<void> = () => setTimeout(everyMs)) {
  for (let waited = 0; waited < (longestS * 1000) / everyMs; waited++) {
    const file = refusing(path, () => openIfRead(path));
    if (file !== null) return file;
    await wait();
  }
  throw refuse('out-no-reader', { field: '--out', exit: 3, values: { value: path, seconds: longestS } });
}

/** Without `O_NONBLOCK` the system would wait for a reader, for ever and deaf to Ctrl-C. */
function openIfRead(path: string): number | null {
  try {
    return openSync(path, constants.O_WRONLY | (constants.O_NONBLOCK ?? 0));
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENXIO') return null;
    throw error;
  }
}
