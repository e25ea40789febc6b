import { gardenEntries } from '../limits/index.ts';

type ListName = keyof typeof gardenEntries;

/** A list that no garden fills: how many entries it has, and the most there may be. */
export type LongList = { list: ListName; count: number; most: number };

/** The first list of what was read that is longer than a garden's may be; null where there is none. */
export function longList(found: unknown): LongList | null {
  for (const list of Object.keys(gardenEntries) as ListName[]) {
    const entries = (found as Partial<Record<string, unknown>> | null)?.[list];
    const most = gardenEntries[list];
    if (Array.isArray(entries) && entries.length > most) return { list, count: entries.length, most };
  }
  return null;
}
