import type { Box, BoxKey, Shelf } from './box.ts';

const dataBase = 'neckfall';
const store = 'garden';

/** Opens what the browser keeps; fails where it refuses. */
export async function openDeviceShelf(): Promise<Shelf> {
  const opening = indexedDB.open(dataBase, 1);
  opening.onupgradeneeded = () => opening.result.createObjectStore(store);
  const held = await settled(opening);
  // a later version in another tab may need it changed
  held.onversionchange = () => held.close();
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
