import { gardenEntries } from '../limits/index.ts';

const lists = ['places', 'cultivars', 'plantings'] as const;

/** A list that no garden fills: how many entries it has, and the most there may be. */
export type LongList = { list: (typeof lists)[number]; count: number; most: number };

/** The first list of what was read that is longer than a garden's may be; null where there is none. */
export function longList(found: unknown): LongList | null {
  for (const list of lists) {
    const entries = (found as Partial<Record<string, unknown>> | null)?.[list];
    if (Array.isArray(entries) && entries.length > gardenEntries) {
      return { list, count: entries.length, most: gardenEntries };
    }
  }
  return null;
}
