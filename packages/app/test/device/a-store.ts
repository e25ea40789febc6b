import { type Box, type BoxKey, isPartKey, type Shelf } from '../../src/device/box.ts';

/** A store that copies what goes in and out, as a browser's does, and tells of what it was asked. */
export function store(): { shelf: Shelf; asked: string[]; held: Map<BoxKey, unknown> } {
  const held = new Map<BoxKey, unknown>();
  const asked: string[] = [];
  const kindOf = (key: BoxKey) => (typeof key === 'number' ? 'step' : isPartKey(key) ? 'part' : key);
  const box: Box = {
    keys: async () => [...held.keys()],
    get: async (key) => {
      asked.push(`get ${kindOf(key)}`);
      return structuredClone(held.get(key));
    },
    put: async (key, value) => {
      asked.push(`put ${kindOf(key)}`);
      held.set(key, structuredClone(value));
    },
    remove: async (key) => void held.delete(key),
  };
  const shelf: Shelf = async (_, work) => {
    const before = new Map(held);
    try {
      return await work(box);
    } catch (error) {
      held.clear();
      for (const [key, value] of before) held.set(key, value);
      throw error;
    }
  };
  return { shelf, asked, held };
}
