import { type Box, type BoxKey, isPartKey, type Shelf } from './box.ts';
import { drawn } from './drawn.ts';

/** What was read or written of a shelf, as of a mark. */
type Read = { mark: unknown; keys: Set<BoxKey> | null; values: Map<BoxKey, unknown> };

const nothing: Read = { mark: undefined, keys: null, values: new Map() };

/**
 * A shelf of which this page reads nothing twice: each change leaves a mark, and where the mark is the one last seen
 * nobody else has changed anything. Parts never change, so what was read of them stays good whatever the mark.
 */
export function shelfOnceRead(shelf: Shelf): Shelf {
  let known = nothing;
  return async (mode, work) => {
    let read = nothing;
    try {
      const result = await shelf(mode, async (box) => {
        read = await stillGood(known, box);
        return work(boxOver(box, read));
      });
      known = read;
      return result;
    } catch (error) {
      known = nothing;
      throw error;
    }
  };
}

async function stillGood(known: Read, box: Box): Promise<Read> {
  const mark = await box.get('mark');
  const isSame = mark !== undefined && mark === known.mark;
  return {
    mark,
    keys: isSame && known.keys ? new Set(known.keys) : null,
    values: new Map(isSame ? known.values : [...known.values].filter(([key]) => isPartKey(key))),
  };
}

function boxOver(box: Box, read: Read): Box {
  let isMarked = false;
  async function mark(): Promise<void> {
    if (isMarked) return;
    isMarked = true;
    read.mark = drawn();
    read.keys?.add('mark');
    await box.put('mark', read.mark);
  }
  return {
    async keys() {
      read.keys ??= new Set(await box.keys());
      return [...read.keys].filter((key) => key !== 'mark');
    },
    async get(key) {
      if (!read.values.has(key)) read.values.set(key, await box.get(key));
      return read.values.get(key);
    },
    async put(key, value) {
      read.values.set(key, value);
      read.keys?.add(key);
      await Promise.all([mark(), box.put(key, value)]);
    },
    async remove(key) {
      read.values.delete(key);
      read.keys?.delete(key);
      await Promise.all([mark(), box.remove(key)]);
    },
  };
}
