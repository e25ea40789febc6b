import { type Garden, type GardenChange, restoreGarden } from '@neckfall/engine';
import type { Box } from './box.ts';
import { gather, type Layout, layOut, type PartedGarden } from './garden-parts.ts';
import { layoutOf, sweep } from './sweep.ts';

const stepCodes = [
  'opened',
  'added',
  'changed',
  'removed',
  'onion-added',
  'onion-removed',
  'seen',
  'seen-changed',
  'seen-removed',
  'work',
  'weather-kept',
  'weather-removed',
  'learnt',
  'bed-added',
  'bed-changed',
  'bed-removed',
  'kitchen',
  'forgotten',
] as const;

/** What a change did, and to what by its name. */
export type Step = { code: (typeof stepCodes)[number]; name: string };

/** A step that was made: its mark tells the tab, and it from any other; null where none was set. */
export type MadeStep = Step & { mark: string | null };

/** The garden as it stands, the steps to either side of it, and what was mended in reading it. */
export type Standing = {
  garden: Garden | null;
  /** Name of the file to save it as; null: none yet. */
  file: string | null;
  undo: MadeStep | null;
  redo: MadeStep | null;
  mended: readonly GardenChange[];
};

/** As a step lies in the box. Step 0 is the empty beginning. A step of version 1 holds its `garden` whole. */
type StepInBox = {
  parts: Layout | null;
  file: string | null;
  step: (Step & { mark?: string | null }) | null;
};

/** More than anyone takes back; older steps are let go. */
export const mostSteps = 50;

/** Hears of observations whose parts went; some may be in other parts still. */
export type LetGo = (observationIds: readonly string[]) => void;

export async function standing(box: Box): Promise<Standing> {
  const { numbers, at } = await where(box);
  const index = numbers.indexOf(at);
  const found = index < 0 ? undefined : await box.get(at);
  const { parted, mended } = await read(box, found);
  const { file, step } = headOf(found);
  const next = numbers[index + 1];
  return {
    garden: parted?.garden ?? null,
    mended,
    file,
    undo: index > 0 ? step : null,
    redo: index >= 0 && next !== undefined ? headOf(await box.get(next)).step : null,
  };
}

/** Begins an empty box with a garden from elsewhere, which is no step. */
export async function begin(box: Box, garden: Garden | null, file: string | null): Promise<void> {
  await write(box, 0, garden, null, { file, step: null });
}

/** Puts a step after the one that stands; what had been taken back is let go. */
export async function putStep(
  box: Box,
  step: Step & { mark?: string },
  make: (now: Garden | null) => Garden | null,
  file?: string,
  letGo?: LetGo,
): Promise<Standing> {
  const { numbers, at } = await where(box);
  const found = numbers.length === 0 ? undefined : await box.get(at);
  const { parted: before } = await read(box, found);
  if (numbers.length === 0) await begin(box, null, null);
  const number = at + 1;
  const garden = make(before?.garden ?? null);
  // first, since there may be little room
  const old = numbers.filter((other) => other > number || other <= number - mostSteps);
  // a step of that number is written over: what it held goes with it
  await removeSteps(box, [...old, ...(numbers.includes(number) ? [number] : [])], letGo);
  await write(box, number, garden, before, { file: file ?? headOf(found).file, step });
  await box.put('at', number);
  return standing(box);
}

/** Goes a step back or on, as far as there is one. */
export async function walk(box: Box, by: -1 | 1): Promise<Standing> {
  const { numbers, at } = await where(box);
  const next = numbers[numbers.indexOf(at) + by];
  if (next !== undefined) await box.put('at', next);
  return standing(box);
}

/** Lets go of the older half of what can be taken back; false where there is nothing. */
export async function letGoOldest(box: Box, letGo?: LetGo): Promise<boolean> {
  const { numbers, at } = await where(box);
  const older = numbers.filter((number) => number < at);
  await removeSteps(box, older.slice(0, Math.ceil(older.length / 2)), letGo);
  return older.length > 0;
}

export async function empty(box: Box): Promise<Standing> {
  for (const key of await box.keys()) await box.remove(key);
  return standing(box);
}

async function removeSteps(box: Box, numbers: readonly number[], letGo?: LetGo): Promise<void> {
  if (numbers.length === 0) return;
  for (const number of numbers) await box.remove(number);
  const gone = await sweep(box);
  letGo?.(gone);
}

/** Numbers of the steps there are, and the one that stands: the newest where that was lost. */
async function where(box: Box): Promise<{ numbers: number[]; at: number }> {
  const keys = await box.keys();
  const numbers = keys.filter((key) => typeof key === 'number').sort((a, b) => a - b);
  const at = await box.get('at');
  const isThere = typeof at === 'number' && numbers.includes(at);
  return { numbers, at: isThere ? at : (numbers.at(-1) ?? 0) };
}

type Read = { parted: PartedGarden | null; mended: readonly GardenChange[] };

/** What steps hold, each read once. */
const known = new WeakMap<object, Read>();

/** Writes a step and the parts of its garden that the one before has not. */
async function write(
  box: Box,
  number: number,
  garden: Garden | null,
  before: PartedGarden | null,
  head: Omit<StepInBox, 'parts'>,
): Promise<void> {
  const laid = garden && layOut(garden, before);
  const step: StepInBox = { parts: laid?.layout ?? null, ...head };
  known.set(step, { parted: laid?.parted ?? null, mended: [] });
  await Promise.all((laid?.written ?? []).map(([key, part]) => box.put(key, part)));
  await box.put(number, step);
}

/** Whatever lies there, damaged or of another version. */
async function read(box: Box, found: unknown): Promise<Read> {
  if (found === undefined) return { parted: null, mended: [] };
  if (typeof found !== 'object' || found === null) return readAnew(box, {});
  const before = known.get(found);
  if (before) return before;
  const now = await readAnew(box, found);
  known.set(found, now);
  return now;
}

async function readAnew(box: Box, found: object): Promise<Read> {
  const layout = layoutOf(found);
  if (layout) {
    const { mended, ...parted } = await gather(box, layout);
    return { parted, mended };
  }
  const { garden } = found as { garden?: unknown };
  if (garden === null || 'parts' in found) return { parted: null, mended: [] };
  const restored = restoreGarden(garden);
  return { parted: { garden: restored.garden, parts: null }, mended: restored.changes };
}

function headOf(found: unknown): { file: string | null; step: MadeStep } {
  const { file, step } = (found ?? {}) as Record<string, unknown>;
  const { code, name, mark } = (step ?? {}) as Record<string, unknown>;
  return {
    file: typeof file === 'string' ? file : null,
    step: {
      code: stepCodes.find((one) => one === code) ?? 'changed',
      name: typeof name === 'string' ? name : '',
      mark: typeof mark === 'string' ? mark : null,
    },
  };
}
