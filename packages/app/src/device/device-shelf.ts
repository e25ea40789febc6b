import type { Box, BoxKey, Shelf } from './box.ts';
import {
  inTransaction,
  machineTimer,
  openDataBase,
  settled,
  type Timer,
  type Unkept,
} from './open-data-base.ts';

/** Opens where the browser keeps the garden; fails where it refuses. `lost`: it was taken away while it was open. */
export async function openDeviceShelf(
  lost: (why: Unkept) => void,
  timer: Timer = machineTimer,
): Promise<Shelf> {
  const held = await openDataBase(lost, timer);
  return (mode, work) => inTransaction(held, 'garden', mode, (store) => work(boxOf(store)));
}

function boxOf(shelf: IDBObjectStore): Box {
  return {
    keys: async () => (await settled(shelf.getAllKeys())) as BoxKey[],
    get: (key) => settled(shelf.get(key)),
    put: async (key, value) => void (await settled(shelf.put(value, key))),
    remove: async (key) => void (await settled(shelf.delete(key))),
  };
}
