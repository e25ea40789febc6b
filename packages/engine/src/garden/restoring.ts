import { gardenRanges } from './garden.ts';

/** Fields that this version does not know are kept as they were found. */
export type Unknown = { [field: string]: unknown };

/** What restoring changed. `path` such as `cultivars[2].packetHours`; `found` is what stood there, cut short. */
export type GardenChange = {
  code:
    | 'not-a-garden'
    | 'schema'
    | 'newer'
    | 'list-replaced'
    | 'entry-dropped'
    | 'named'
    | 'id-given'
    | 'emptied';
  path: string;
  found: string;
};

export type Tell = (code: GardenChange['code'], path: string, value: unknown) => void;

/** An entry of a list from what was found there; null where it can't be used. `at` is its place in the list. */
export type RestoreEntry<Entry> = (found: Unknown, path: string, tell: Tell, at: number) => Entry | null;

export function nameAndId(
  found: Unknown,
  path: string,
  tell: Tell,
  at: number,
): { id: string; name: string } {
  const named = typeof found.name === 'string' && found.name.trim() !== '';
  if (!named) tell('named', `${path}.name`, found.name);
  return {
    id: givenId(found),
    name: named ? (found.name as string).trim() : `${at + 1}`,
  };
}

/** The id an entry has; empty where it has none. */
export function givenId(found: Unknown): string {
  return typeof found.id === 'string' ? found.id : '';
}

export function wordOrNull<Word extends string>(
  found: Unknown,
  field: string,
  words: readonly Word[],
  path: string,
  tell: Tell,
): Word | null {
  const match = words.find((word) => word === found[field]);
  return match ?? emptied(found, field, path, tell);
}

/** @param field a number with a range of its own in {@link gardenRanges} */
export function numberOrNull(
  found: Unknown,
  field: Exclude<keyof typeof gardenRanges, 'keepsMonths' | 'allium'>,
  path: string,
  tell: Tell,
): number | null {
  const value = found[field];
  return isNumberIn(value, gardenRanges[field]) ? value : emptied(found, field, path, tell);
}

export function textOrNull(
  found: Unknown,
  field: string,
  path: string,
  tell: Tell,
  isFit: (text: string) => boolean = (text) => text.trim() !== '',
): string | null {
  const value = found[field];
  return typeof value === 'string' && isFit(value) ? value : emptied(found, field, path, tell);
}

/** Nothing may be said of a field; anything else that stood there is told. */
export function emptied(found: Unknown, field: string, path: string, tell: Tell): null {
  const value = found[field];
  if (value !== undefined && value !== null) tell('emptied', `${path}.${field}`, value);
  return null;
}

export function isNumberIn(value: unknown, [low, high]: readonly [number, number]): value is number {
  return typeof value === 'number' && value >= low && value <= high;
}

export function isRecord(value: unknown): value is Unknown {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
