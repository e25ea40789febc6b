import { type Garden, type GardenChange, restoreGarden } from '@neckfall/engine';
import type { Box } from './box.ts';

const stepCodes = [
  'opened',
  'added',
  'changed',
  'removed',
  'onion-added',
  'onion-removed',
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

/** As a step lies in the box. Step 0 is the empty beginning. */
type StepInBox = {
  garden: Garden | null;
  file: string | null;
  step: (Step & { mark?: string | null }) | null;
};

/** More than anyone takes back; older steps are let go. */
export const mostSteps = 50;

export async function standing(box: Box): Promise<Standing> {
  const { numbers, at } = await where(box);
  const index = numbers.indexOf(at);
  const { garden, mended, file, step } = read(index < 0 ? undefined : await box.get(at));
  const next = numbers[index + 1];
  return {
    garden,
    mended,
    file,
    undo: index > 0 ? step : null,
    redo: index >= 0 && next !== undefined ? read(await box.get(next)).step : null,
  };
}

/** Begins an empty box with a garden from elsewhere, which is no step. */
export async function begin(box: Box, garden: Garden | null, file: string | null): Promise<void> {
  await box.put(0, { garden, file, step: null } satisfies StepInBox);
}

/** Puts a step after the one that stands; what had been taken back is let go. */
export async function putStep(
  box: Box,
  step: Step & { mark?: string },
  make: (now: Garden | null) => Garden | null,
  file?: string,
): Promise<Standing> {
  const { numbers, at } = await where(box);
  const before = await standing(box);
  if (numbers.length === 0) await begin(box, null, null);
  const number = at + 1;
  const garden = make(before.garden);
  // first, since there may be little room
  for (const old of numbers) if (old > number || old <= number - mostSteps) await box.remove(old);
  await box.put(number, { garden, file: file ?? before.file, step } satisfies StepInBox);
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
export async function letGoOldest(box: Box): Promise<boolean> {
  const { numbers, at } = await where(box);
  const older = numbers.filter((number) => number < at);
  for (const old of older.slice(0, Math.ceil(older.length / 2))) await box.remove(old);
  return older.length > 0;
}

export async function empty(box: Box): Promise<Standing> {
  for (const key of await box.keys()) await box.remove(key);
  return standing(box);
}

/** Numbers of the steps there are, and the one that stands: the newest where that was lost. */
async function where(box: Box): Promise<{ numbers: number[]; at: number }> {
  const keys = await box.keys();
  const numbers = keys.filter((key) => typeof key === 'number').sort((a, b) => a - b);
  const at = await box.get('at');
  const isThere = typeof at === 'number' && numbers.includes(at);
  return { numbers, at: isThere ? at : (numbers.at(-1) ?? 0) };
}

/** Whatever lies there, damaged or of another version. */
function read(found: unknown): Pick<Standing, 'garden' | 'mended' | 'file'> & { step: MadeStep } {
  const { garden, file, step } = (typeof found === 'object' && found !== null ? found : {}) as Record<
    string,
    unknown
  >;
  const isNone = garden === null || (garden === undefined && found === undefined);
  const restored = isNone ? null : restoreGarden(garden);
  return {
    garden: restored?.garden ?? null,
    mended: restored?.changes ?? [],
    file: typeof file === 'string' ? file : null,
    step: stepOf(step),
  };
}

function stepOf(found: unknown): MadeStep {
  const { code, name, mark } = (found ?? {}) as Record<string, unknown>;
  return {
    code: stepCodes.find((known) => known === code) ?? 'changed',
    name: typeof name === 'string' ? name : '',
    mark: typeof mark === 'string' ? mark : null,
  };
}
