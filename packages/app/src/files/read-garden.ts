import {
  type GardenChange,
  gardenBytes,
  isNestedTooDeep,
  type LongList,
  longList,
  type RestoredGarden,
  restoreGarden,
} from '@neckfall/engine';

/** Why a file is no garden. */
export type GardenRefusal =
  | { problem: 'too-big'; bytes: number; most: number }
  | ({ problem: 'too-many' } & LongList)
  | { problem: 'unreadable'; reason: string }
  | { problem: 'not-text' }
  | { problem: 'not-json'; reason: string }
  | { problem: 'too-deep' }
  | { problem: 'not-garden'; found: string };

/**
 * Reads a garden file; damage inside is mended and told, what is no garden is refused.
 *
 * @param newId gives entries without an id of their own one that no other file has
 */
export async function readGarden(file: Blob, newId: () => string): Promise<RestoredGarden | GardenRefusal> {
  if (file.size > gardenBytes) return { problem: 'too-big', bytes: file.size, most: gardenBytes };
  let bytes: ArrayBuffer;
  try {
    bytes = await file.arrayBuffer();
  } catch (error) {
    return { problem: 'unreadable', reason: (error as Error).message };
  }
  return gardenOf(bytes, newId);
}

function gardenOf(bytes: ArrayBuffer, newId: () => string): RestoredGarden | GardenRefusal {
  let text: string;
  try {
    text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return { problem: 'not-text' };
  }
  if (isNestedTooDeep(text)) return { problem: 'too-deep' };
  let found: unknown;
  try {
    found = JSON.parse(text);
  } catch (error) {
    return { problem: 'not-json', reason: (error as Error).message.slice(0, 120) };
  }
  const long = longList(found);
  if (long) return { problem: 'too-many', ...long };
  const restored = restoreGarden(found, newId);
  const wrong = restored.changes.find(isNoGarden);
  return wrong ? { problem: 'not-garden', found: wrong.found } : restored;
}

/** Another document, or something that is none: taking it for a garden would show an empty one. */
function isNoGarden({ code }: GardenChange): boolean {
  return code === 'not-a-garden' || code === 'schema';
}
