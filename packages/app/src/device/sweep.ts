import { type Box, isPartKey, type PartKey } from './box.ts';
import { type Layout, lists } from './garden-parts.ts';

/** Where a step says that its garden lies; null where it does not say so. */
export function layoutOf(found: unknown): Layout | null {
  const { parts } = (found ?? {}) as { parts?: Partial<Layout> | null };
  // steps of before there were parts of work have none
  const layout = parts && { jobs: [], ...parts };
  const isKey = (key: unknown) => typeof key === 'string' && isPartKey(key as PartKey);
  const areKeys = (keys: unknown) => Array.isArray(keys) && keys.every(isKey);
  return layout && isKey(layout.rest) && lists.every((list) => areKeys(layout[list]))
    ? (layout as Layout)
    : null;
}

/** Removes the parts that no step refers to any more. @returns ids of the observations that they held */
export async function sweep(box: Box): Promise<string[]> {
  const keys = await box.keys();
  const wanted = new Set<PartKey>();
  for (const layout of await layouts(box)) {
    for (const key of [layout.rest, ...lists.flatMap((list) => layout[list])]) wanted.add(key);
  }
  const gone = keys.filter(isPartKey).filter((key) => !wanted.has(key));
  const held = await Promise.all(gone.map((key) => box.get(key)));
  await Promise.all(gone.map((key) => box.remove(key)));
  return held.flatMap(idsOf);
}

/** Ids of all observations that any step has. */
export async function idsInSteps(box: Box): Promise<Set<string>> {
  const steps = await stepsIn(box);
  const keys = new Set((await layouts(box)).flatMap(({ observations }) => observations));
  const parts = await Promise.all([...keys].map((key) => box.get(key)));
  const whole = steps.map(
    (step) => (step as { garden?: { observations?: unknown } } | null)?.garden?.observations,
  );
  return new Set([...parts, ...whole].flatMap(idsOf));
}

async function layouts(box: Box): Promise<Layout[]> {
  return (await stepsIn(box)).flatMap((step) => layoutOf(step) ?? []);
}

async function stepsIn(box: Box): Promise<unknown[]> {
  const numbers = (await box.keys()).filter((key) => typeof key === 'number');
  return Promise.all(numbers.map((number) => box.get(number)));
}

/** Weather and work have ids too; nothing is kept under those. */
function idsOf(part: unknown): string[] {
  if (!Array.isArray(part)) return [];
  return part.flatMap((entry) => (typeof entry?.id === 'string' ? [entry.id] : []));
}
