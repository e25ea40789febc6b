import {
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

const field = '--garden';
/** Changes told one by one; the others are counted. */
const mostTold = 20;

/** Reads the file of `--garden`, or refuses it with exit code 3; damage inside is mended and told. */
export function readGardenFile(path: string, { say }: Speaker): GardenFile {
  const found = jsonOf(path);
  const long = longList(found);
  if (long) throw refuse('garden-too-many', { field, exit: 3, values: { value: path, ...long } });
  if (isNestedTooDeep(found))
    throw refuse('garden-too-deep', { field, exit: 3, values: { value: path, levels: mostLevels } });
  const { garden, changes } = restoreGarden(found);
  const sentence = ({ code, path: where, found }: GardenChange) =>
    say('garden.changed', { file: path, change: say(`garden.change.${code}`, { path: where, found }) });
  const fold = (name: string) => name.normalize('NFKC').trim().toLowerCase();
  return {
    garden,
    warnings:
      changes.length > mostTold
        ? [
            ...changes.slice(0, mostTold).map(sentence),
            say('garden.changed-more', { file: path, count: changes.length - mostTold }),
          ]
        : changes.map(sentence),
    // of names alike, the one that is so written
    find: (name) =>
      garden.cultivars.find((own) => own.name === name) ??
      garden.cultivars.find((own) => fold(own.name) === fold(name)),
    like: (name) => garden.cultivars.map((own) => own.name).filter((own) => fold(own).includes(fold(name))),
  };
}

function jsonOf(path: string): unknown {
  let text: string | null;
  try {
    const bytes = readBounded(path, gardenBytes);
    text = bytes && new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch (cause) {
    const { code = 'not UTF-8' } = cause as NodeJS.ErrnoException;
    const values = { value: path, reason: code };
    throw refuse(code === 'ENOENT' ? 'garden-missing' : 'garden-unreadable', {
      field,
      exit: 3,
      values,
      cause,
    });
  }
  if (text === null) {
    throw refuse('garden-too-big', { field, exit: 3, values: { value: path, limit: gardenBytes / 1e6 } });
  }
  try {
    return JSON.parse(text);
  } catch (cause) {
    const reason = (cause as Error).message;
    throw refuse('garden-refused', { field, exit: 3, values: { value: path, reason }, cause });
  }
}
