import {
  foldName,
  type Garden,
  type GardenChange,
  gardenBytes,
  isNestedTooDeep,
  longList,
  mostLevels,
  type OwnCultivar,
  restoreGarden,
} from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { refuse } from '../refusal/refusal.ts';
import { readBounded } from './read-bounded.ts';

/** A grower's own file, read for what is needed of it. */
export type GardenFile = {
  garden: Garden;
  /** What was changed in reading it. */
  warnings: readonly string[];
  find(name: string): OwnCultivar | undefined;
  /** Own onions of a like name. */
  like(name: string): string[];
};

/** A garden file as it is written. */
export type GardenText = {
  bytes: Buffer;
  /** With its byte order mark, where it has one. */
  text: string;
  found: unknown;
  garden: Garden;
  changes: readonly GardenChange[];
};

/** Changes told one by one; the others are counted. */
const mostTold = 20;

/** Reads the file of `--garden`, or refuses it with exit code 3; damage inside is mended and told. */
export function readGardenFile(path: string, speaker: Speaker): GardenFile {
  const field = '--garden';
  const { garden, changes } = readGardenText(path, field);
  return {
    garden,
    warnings: changeSentences(changes, field, path, speaker),
    // of names alike, the one that is so written
    find: (name) =>
      garden.cultivars.find((own) => own.name === name) ??
      garden.cultivars.find((own) => foldName(own.name) === foldName(name)),
    like: (name) =>
      garden.cultivars.map((own) => own.name).filter((own) => foldName(own).includes(foldName(name))),
  };
}

/** What was mended in reading a garden file, in sentences. */
export function changeSentences(
  changes: readonly GardenChange[],
  field: string,
  path: string,
  { say }: Speaker,
): string[] {
  const sentences = changes.slice(0, mostTold).map(({ code, path: where, found }) => {
    const change = say(`garden.change.${code}`, { path: where, found });
    return say('garden.changed', { field, file: path, change });
  });
  const more = changes.length - mostTold;
  if (more > 0) sentences.push(say('garden.changed-more', { field, file: path, count: more }));
  return sentences;
}

/** Reads and restores a garden file, or refuses it with exit code 3. @param field what named it on the command line */
export function readGardenText(path: string, field: string): GardenText {
  const { bytes, text } = textOf(path, field);
  if (isNestedTooDeep(text))
    throw refuse('garden-too-deep', { field, exit: 3, values: { value: path, levels: mostLevels } });
  const found = jsonOf(text, path, field);
  const long = longList(found);
  if (long) throw refuse('garden-too-many', { field, exit: 3, values: { value: path, ...long } });
  return { bytes, text, found, ...restoreGarden(found) };
}

function textOf(path: string, field: string): { bytes: Buffer; text: string } {
  try {
    const bytes = readBounded(path, gardenBytes);
    if (bytes === null) throw gardenTooBig(path, field);
    return { bytes, text: new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes) };
  } catch (cause) {
    if (cause instanceof Error && 'refusal' in cause) throw cause;
    const { code = 'not UTF-8' } = cause as NodeJS.ErrnoException;
    const values = { value: path, reason: code };
    throw refuse(code === 'ENOENT' ? 'garden-missing' : 'garden-unreadable', {
      field,
      exit: 3,
      values,
      cause,
    });
  }
}

export function gardenTooBig(path: string, field: string) {
  return refuse('garden-too-big', { field, exit: 3, values: { value: path, limit: gardenBytes / 1e6 } });
}

function jsonOf(text: string, path: string, field: string): unknown {
  try {
    return JSON.parse(text.replace(/^\ufeff/, ''));
  } catch (cause) {
    const reason = (cause as Error).message;
    throw refuse('garden-refused', { field, exit: 3, values: { value: path, reason }, cause });
  }
}
