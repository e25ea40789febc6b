import type { Box, BoxKey, Shelf } from './box.ts';

const dataBase = 'neckfall';
const store = 'garden';
const version = 1;

/** Longer than any browser takes that opens it at all, ms. */
const longestMs = 5000;

/** Why the garden is not kept. */
export type Unkept = 'refused' | 'newer' | 'slow' | 'full' | 'cleared';

/** Calls back after so many ms, unless it is stopped before. */
export type Timer = (ms: number, due: () => void) => () => void;

const machineTimer: Timer = (ms, due) => {
  const timer = setTimeout(due, ms);
  return () => clearTimeout(timer);
};

/** Opens what the browser keeps; fails where it refuses. `lost`: it was taken away while it was open. */
export async function openDeviceShelf(
  lost: (why: Unkept) => void,
  timer: Timer = machineTimer,
): Promise<Shelf> {
  const opening = indexedDB.open(dataBase, version);
  opening.onupgradeneeded = () => opening.result.createObjectStore(store);
  const held = await inTime(settled(opening), timer);
  // a later version in another tab needs it changed, or somebody wants it gone
  held.onversionchange = ({ newVersion }) => {
    held.close();
    lost(newVersion === null ? 'cleared' : 'newer');
  };
  held.onclose = () => lost('cleared');
  return async (mode, work) => {
    const transaction = held.transaction(store, mode);
    const done = new Promise<void>((resolve, reject) => {
      transaction.oncomplete = () => resolve();
      transaction.onabort = () => reject(transaction.error ?? new Error('aborted'));
    });
    try {
      const result = await work(boxOf(transaction.objectStore(store)));
      await done;
      return result;
    } catch (error) {
      done.catch(() => {});
      abort(transaction);
      throw error;
    }
  };
}

/** What a failure means, by the names that the standards give (Indexed Database API, Web IDL). */
export function whyUnkept(error: unknown): Unkept {
  switch ((error as Error | undefined)?.name) {
    case 'VersionError':
      return 'newer';
    case 'TimeoutError':
      return 'slow';
    case 'QuotaExceededError':
      return 'full';
    default:
      return 'refused';
  }
}

/** It may wait for ever, behind another tab. What opens too late is closed, so that nobody waits for it. */
function inTime(opening: Promise<IDBDatabase>, timer: Timer): Promise<IDBDatabase> {
  return new Promise((resolve, reject) => {
    let isLate = false;
    const stop = timer(longestMs, () => {
      isLate = true;
      reject(new DOMException('not opened in time', 'TimeoutError'));
    });
    opening.finally(stop).then((held) => (isLate ? held.close() : resolve(held)), reject);
  });
}

function boxOf(shelf: IDBObjectStore): Box {
  return {
    keys: async () => (await settled(shelf.getAllKeys())) as BoxKey[],
    get: (key) => settled(shelf.get(key)),
    put: async (key, value) => void (await settled(shelf.put(value, key))),
    remove: async (key) => void (await settled(shelf.delete(key))),
  };
}

function settled<Result>(request: IDBRequest<Result>): Promise<Result> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}

function abort(transaction: IDBTransaction): void {
  try {
    transaction.abort();
  } catch {
    // it was over already
  }
}
