import { inTransaction, machineTimer, openDataBase, settled } from './open-data-base.ts';

/** Photos of what was seen, by the id of the observation; on this device alone, in no file. */
export type Photos = {
  put: (observationId: string, photo: Blob) => Promise<void>;
  get: (observationId: string) => Promise<Blob | null>;
  remove: (observationId: string) => Promise<void>;
  keys: () => Promise<string[]>;
  /** False: they last as long as the page, as the browser does not keep them. */
  areKept: () => boolean;
};

/** Where the browser refuses, memory holds them; so it does from then on for those it has no room for. */
export async function openPhotos(open = openDataBase): Promise<Photos> {
  let held: IDBDatabase | null = await open(() => {
    held = null;
  }, machineTimer).catch(() => null);
  let areKept = held !== null;
  const memory = new Map<string, Blob>();

  async function inStore<Result>(
    mode: 'readonly' | 'readwrite',
    work: (store: IDBObjectStore) => IDBRequest<Result>,
  ): Promise<Result | null> {
    if (!held) return null;
    return inTransaction(held, 'photos', mode, (store) => settled(work(store)));
  }

  async function remove(id: string): Promise<void> {
    memory.delete(id);
    await inStore('readwrite', (store) => store.delete(id));
  }

  return {
    async put(id, photo) {
      memory.delete(id);
      const isStored = await inStore('readwrite', (store) => store.put(photo, id)).catch(() => null);
      if (isStored !== null) return;
      areKept = false;
      memory.set(id, photo);
    },
    async get(id) {
      const found = memory.get(id) ?? (await inStore('readonly', (store) => store.get(id)).catch(() => null));
      return found instanceof Blob ? found : null;
    },
    remove,
    async keys() {
      const found = (await inStore('readonly', (store) => store.getAllKeys()).catch(() => null)) ?? [];
      return [...new Set([...memory.keys(), ...found.filter((key) => typeof key === 'string')])];
    },
    areKept: () => areKept && held !== null,
  };
}

let opening: Promise<Photos> | null = null;

/** The photos of this device, opened when they are first asked for. */
export function devicePhotos(): Promise<Photos> {
  opening ??= openPhotos();
  return opening;
}

/** Removes those photos of some observations, or all, whose observation no step has any more. */
export async function letGoPhotos(
  ids: readonly string[] | 'all',
  idsInSteps: () => Promise<ReadonlySet<string>>,
): Promise<void> {
  const photos = await devicePhotos();
  const kept = await photos.keys();
  const maybe = ids === 'all' ? kept : inBoth(kept, ids);
  if (maybe.length === 0) return;
  const wanted = ids === 'all' ? new Set<string>() : await idsInSteps();
  for (const id of maybe) if (!wanted.has(id)) await photos.remove(id);
}

function inBoth(kept: readonly string[], ids: readonly string[]): string[] {
  const asked = new Set(ids);
  return kept.filter((id) => asked.has(id));
}
