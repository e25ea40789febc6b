import { type Garden, type GardenChange, gardenSchemaName, restoreGarden } from '@neckfall/engine';
import type { Box, PartKey } from './box.ts';
import { drawn } from './drawn.ts';

/*
 * A step refers to parts of the garden: what was seen and what became of work, by planting; the weather, by place; and
 * all the rest. A change writes only the parts that it touches; all others are those of the step before.
 */

export const lists = ['observations', 'jobs', 'weather'] as const;
type ListName = (typeof lists)[number];
type ByList<Value> = Record<ListName, Value>;

/** What entries lie together. */
const parted = {
  observations: (entry: Garden['observations'][number]) => entry.plantingId,
  jobs: (entry: Garden['jobs'][number]) => entry.plantingId,
  weather: (entry: Garden['weather'][number]) => entry.id,
} as const;

/** Where the garden of a step lies. */
export type Layout = { rest: PartKey } & ByList<readonly PartKey[]>;

type Entry = { id: string };
type Part = { key: PartKey; entries: readonly Entry[] };

/** A garden, and the parts that are known to hold it; null where they don't hold just this. */
export type PartedGarden = {
  garden: Garden;
  parts: ({ rest: PartKey } & ByList<readonly Part[]>) | null;
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
    ...byList((list) => partsOf(list, garden, before, write)),
  };
  const layout = { rest: parts.rest, ...byList((list) => parts[list].map(({ key }) => key)) };
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
  const raw = byList((list) => found[lists.indexOf(list)]);
  const whole = restoredPart(foundRest, null);
  const parts = byList(wholeParts);
  if (whole && lists.every((list) => parts[list] && whole[list].length === 0)) {
    const lone = byList((list) => parts[list]!.flatMap((part) => part.entries));
    if (lists.every((list) => hasOwnIds(lone[list]))) {
      const garden = { ...whole, ...lone } as Garden;
      return { garden, parts: { rest, ...(parts as ByList<Part[]>) }, mended: [] };
    }
  }
  const { garden, changes } = restoreGarden({
    ...(foundRest as object),
    // work lay with the rest before it had parts of its own
    ...byList((list) => [...(whole?.[list] ?? []), ...raw[list].flat()]),
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

function restOf({ observations: _, jobs: __, weather: ___, ...rest }: Garden): Omit<Garden, ListName> {
  return rest;
}

function byList<Value>(of: (list: ListName) => Value): ByList<Value> {
  return { observations: of('observations'), jobs: of('jobs'), weather: of('weather') };
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
