import { type Garden, type GardenChange, gardenSchemaName, restoreGarden } from '@neckfall/engine';
import type { Box, PartKey } from './box.ts';
import { drawn } from './drawn.ts';

/*
 * A step refers to parts of the garden: what was seen, by planting; the weather, by place; and all the rest. A change
 * writes only the parts that it touches; all others are those of the step before.
 */

type ListName = 'observations' | 'weather';

/** What entries lie together. */
const parted = {
  observations: (entry: Garden['observations'][number]) => entry.plantingId,
  weather: (entry: Garden['weather'][number]) => entry.id,
} as const;
const lists = ['observations', 'weather'] as const;

/** Where the garden of a step lies. */
export type Layout = { rest: PartKey } & Record<ListName, readonly PartKey[]>;

type Entry = { id: string };
type Part = { key: PartKey; entries: readonly Entry[] };

/** A garden, and the parts that are known to hold it; null where they don't hold just this. */
export type PartedGarden = {
  garden: Garden;
  parts: ({ rest: PartKey } & Record<ListName, readonly Part[]>) | null;
};

/** The garden laid out in parts: those of before that hold the very same entries, and new ones to be written. */
export function layOut(
  garden: Garden,
  before: PartedGarden | null,
): { parted: PartedGarden; layout: Layout; written: readonly (readonly [PartKey, unknown])[] } {
  const written: [PartKey, unknown][] = [];
  const write = (value: unknown): PartKey => {
    const key: PartKey = `part.${drawn()}`;
    written.push([key, value]);
    return key;
  };
  const kept = before?.parts;
  const rest = restOf(garden);
  const parts = {
    rest: kept && isSameRecord(rest, restOf(before.garden)) ? kept.rest : write(rest),
    observations: partsOf('observations', garden, before, write),
    weather: partsOf('weather', garden, before, write),
  };
  const keysOf = (list: ListName) => parts[list].map(({ key }) => key);
  const layout = { rest: parts.rest, observations: keysOf('observations'), weather: keysOf('weather') };
  return { parted: { garden, parts }, layout, written };
}

function partsOf(
  list: ListName,
  garden: Garden,
  before: PartedGarden | null,
  write: (value: unknown) => PartKey,
): readonly Part[] {
  const kept = before?.parts?.[list] ?? [];
  if (before?.parts && before.garden[list] === garden[list]) return kept;
  const groupOf = parted[list] as (entry: Entry) => string | null;
  const groups = new Map<string | null, Entry[]>();
  for (const entry of garden[list]) {
    const group = groups.get(groupOf(entry));
    if (group) group.push(entry);
    else groups.set(groupOf(entry), [entry]);
  }
  const keptOf = new Map(kept.map((part) => [groupOf(part.entries[0]), part]));
  return [...groups].map(([group, entries]) => {
    const same = keptOf.get(group);
    return same && isSameList(same.entries, entries) ? same : { key: write(entries), entries };
  });
}

/** The garden that lies in some parts, mended where they are damaged. */
export async function gather(
  box: Box,
  { rest, ...keys }: Layout,
): Promise<PartedGarden & { mended: readonly GardenChange[] }> {
  const [foundRest, ...found] = await Promise.all([
    box.get(rest),
    ...lists.map((list) => Promise.all(keys[list].map((key) => box.get(key)))),
  ]);
  const raw = { observations: found[0], weather: found[1] };
  const whole = restoredPart(foundRest, null);
  const parts = { rest, observations: wholeParts('observations'), weather: wholeParts('weather') };
  if (whole && parts.observations && parts.weather) {
    const entries = (list: ListName) => (parts[list] as Part[]).flatMap((part) => part.entries);
    const lone = { observations: entries('observations'), weather: entries('weather') };
    const garden = { ...whole, ...lone } as Garden;
    if (lists.every((list) => hasOwnIds(lone[list]))) {
      return { garden, parts: parts as NonNullable<PartedGarden['parts']>, mended: [] };
    }
  }
  const { garden, changes } = restoreGarden({
    ...(foundRest as object),
    observations: raw.observations.flat(),
    weather: raw.weather.flat(),
  });
  return { garden, parts: null, mended: changes };

  function wholeParts(list: ListName): Part[] | null {
    const all: Part[] = [];
    for (const [at, key] of keys[list].entries()) {
      const restored = restoredPart(raw[list][at], list);
      if (!restored || restored[list].length === 0) return null;
      all.push({ key, entries: restored[list] });
    }
    return all;
  }
}

/** Parts never change: each is restored once. */
const restored = new WeakMap<object, Garden | null>();

/** What a part holds, as a garden that has nothing else; null where something of it had to be mended. */
function restoredPart(found: unknown, list: ListName | null): Garden | null {
  if (typeof found !== 'object' || found === null) return null;
  const known = restored.get(found);
  if (known !== undefined) return known;
  const { garden, changes } = restoreGarden(
    list === null ? found : { schema: gardenSchemaName, [list]: found },
  );
  const whole = changes.length > 0 ? null : garden;
  restored.set(found, whole);
  return whole;
}

function restOf({ observations: _, weather: __, ...rest }: Garden): Omit<Garden, ListName> {
  return rest;
}

function isSameRecord(one: object, other: object): boolean {
  const names = Object.keys(one);
  const of = (record: object, name: string) => (record as Record<string, unknown>)[name];
  return (
    names.length === Object.keys(other).length &&
    names.every((name) => Object.hasOwn(other, name) && of(one, name) === of(other, name))
  );
}

function isSameList(one: readonly object[], other: readonly object[]): boolean {
  return one.length === other.length && one.every((entry, at) => entry === other[at]);
}

function hasOwnIds(entries: readonly Entry[]): boolean {
  return new Set(entries.map(({ id }) => id)).size === entries.length;
}
