import { settled } from './open-data-base.ts';

/** Points of a map as they were worked out together: latitude and longitude in turn, and what was found at each. */
export type AtlasBatch = {
  /** Points with onions, degrees. */
  points: Float32Array;
  /** Packed entries of those points. */
  packed: Float32Array;
  /** Points where nothing can be grown: sea, or beyond what is covered. */
  nothing: Float32Array;
};

export type AtlasShelf = {
  /** Hands over all that is kept of the answers asked for, a few batches a task; of others it lets go. */
  each: (take: (batch: AtlasBatch) => void) => Promise<void>;
  keep: (batch: AtlasBatch) => Promise<void>;
};

/** Apart from the garden: it can be worked out again, and may go at any time. */
const name = 'neckfall.map';
const store = 'batches';
/** Batches read in one task. */
const together = 8;

/**
 * Where points of a map are kept. A browser that refuses keeps none: they are worked out at each visit.
 * @param answers what the answers rest on: engine, weather years, day
 */
export function openAtlasShelf(answers: string): AtlasShelf {
  const opened = open().catch(() => null);
  const end = [answers, []];
  return {
    async each(take) {
      try {
        const held = await opened;
        if (!held) return;
        const others = (await settled(held.transaction(store).objectStore(store).getAllKeys())) as string[][];
        if (others.some(([key]) => key !== answers)) await letGo(held, others, answers);
        for (let last: IDBValidKey | undefined = [answers]; last !== undefined; ) {
          const range = IDBKeyRange.bound(last, end, true);
          const kept = held.transaction(store).objectStore(store);
          const reading = settled(kept.getAllKeys(range, together));
          for (const batch of await settled<AtlasBatch[]>(kept.getAll(range, together))) take(batch);
          last = (await reading).at(-1);
        }
      } catch {
        // what can't be read is worked out anew
      }
    },
    async keep(batch) {
      try {
        const held = await opened;
        if (!held) return;
        const [latitude, longitude] = batch.points.length > 0 ? batch.points : batch.nothing;
        const key = [answers, `${latitude} ${longitude}`];
        await settled(held.transaction(store, 'readwrite').objectStore(store).put(batch, key));
      } catch {
        // full, or taken away: the page has it as long as it stands
      }
    },
  };
}

/** Lets go of all points: of a place of one's own they tell where it is. */
export function dropAtlasShelf(): void {
  try {
    indexedDB.deleteDatabase(name);
  } catch {
    // a browser that keeps nothing
  }
}

async function open(): Promise<IDBDatabase> {
  const opening = indexedDB.open(name, 1);
  opening.onupgradeneeded = () => opening.result.createObjectStore(store);
  const held = await settled(opening);
  held.onversionchange = () => held.close();
  return held;
}

async function letGo(held: IDBDatabase, keys: string[][], answers: string): Promise<void> {
  const all = held.transaction(store, 'readwrite').objectStore(store);
  for (const key of keys) if (key[0] !== answers) all.delete(key);
}
