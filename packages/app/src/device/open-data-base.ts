import { dataBaseName } from './names.ts';

/** 1: the garden alone. 2: photos beside it; the garden’s steps refer to parts. */
const version = 2;
/** Each holds its own things; what an older version left in them is read as it is. */
const stores = ['garden', 'photos'] as const;

export type StoreName = (typeof stores)[number];

/** Longer than any browser takes that opens it at all, ms. */
const longestMs = 5000;

/** Why the garden is not kept. */
export type Unkept = 'refused' | 'newer' | 'slow' | 'full' | 'cleared';

/** Calls back after so many ms, unless it is stopped before. */
export type Timer = (ms: number, due: () => void) => () => void;

export const machineTimer: Timer = (ms, due) => {
  const timer = setTimeout(due, ms);
  return () => clearTimeout(timer);
};

/** Opens what the browser keeps; fails where it refuses. `lost`: it was taken away while it was open. */
export async function openDataBase(lost: (why: Unkept) => void, timer: Timer): Promise<IDBDatabase> {
  const opening = indexedDB.open(dataBaseName, version);
  opening.onupgradeneeded = () => {
    const { result } = opening;
    for (const store of stores) {
      if (!result.objectStoreNames.contains(store)) result.createObjectStore(store);
    }
  };
  const held = await inTime(settled(opening), timer);
  // a later version in another tab needs it changed, or somebody wants it gone
  held.onversionchange = ({ newVersion }) => {
    held.close();
    lost(newVersion === null ? 'cleared' : 'newer');
  };
  held.onclose = () => lost('cleared');
  return held;
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

export function settled<Result>(request: IDBRequest<Result>): Promise<Result> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}

/** One transaction on a store, done as one or not at all. */
export async function inTransaction<Result>(
  held: IDBDatabase,
  store: StoreName,
  mode: 'readonly' | 'readwrite',
  work: (store: IDBObjectStore) => Promise<Result>,
): Promise<Result> {
  const transaction = held.transaction(store, mode);
  const done = new Promise<void>((resolve, reject) => {
    transaction.oncomplete = () => resolve();
    transaction.onabort = () => reject(transaction.error ?? new Error('aborted'));
  });
  try {
    const result = await work(transaction.objectStore(store));
    await done;
    return result;
  } catch (error) {
    done.catch(() => {});
    abort(transaction);
    throw error;
  }
}

function abort(transaction: IDBTransaction): void {
  try {
    transaction.abort();
  } catch {
    // it was over already
  }
}
