/** Part of a garden: written once under a key of its own, and never changed. */
export type PartKey = `part.${string}`;

/** A step of the garden by its number, the number of the one that stands, the mark of the last change, or a part. */
export type BoxKey = number | 'at' | 'mark' | PartKey;

/** Where steps of the garden lie: in the browser, or in memory where it refuses. */
export type Box = {
  keys: () => Promise<BoxKey[]>;
  get: (key: BoxKey) => Promise<unknown>;
  put: (key: BoxKey, value: unknown) => Promise<void>;
  remove: (key: BoxKey) => Promise<void>;
};

/** All that one piece of work does in its box happens as one, or not at all. */
export type Shelf = <Result>(
  mode: 'readonly' | 'readwrite',
  work: (box: Box) => Promise<Result>,
) => Promise<Result>;

export function isPartKey(key: BoxKey): key is PartKey {
  return typeof key === 'string' && key.startsWith('part.');
}

/** Lasts as long as the page. */
export function memoryShelf(): Shelf {
  const held = new Map<BoxKey, unknown>();
  let last: Promise<unknown> = Promise.resolve();
  const box: Box = {
    keys: async () => [...held.keys()],
    get: async (key) => held.get(key),
    put: async (key, value) => void held.set(key, value),
    remove: async (key) => void held.delete(key),
  };
  return (_, work) => {
    const done = last.then(() => work(box));
    last = done.catch(() => {});
    return done;
  };
}
