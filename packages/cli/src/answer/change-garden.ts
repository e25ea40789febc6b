import { statSync } from 'node:fs';
import { setTimeout } from 'node:timers/promises';
import {
  type GardenPlanting,
  gardenBytes,
  gardenEntries,
  type JobMark,
  type Observation,
} from '@neckfall/engine';
import { type GardenText, gardenTooBig, readGardenText } from '../files/garden-file.ts';
import { withEntry } from '../files/json-list.ts';
import { readBounded } from '../files/read-bounded.ts';
import type { RawOutputOptions } from '../options/place-options.ts';
import { type WholeFile, wholeFile } from '../output/whole-file.ts';
import { refusalOf, refuse } from '../refusal/refusal.ts';
import type { Answer } from './answer.ts';
import { deliver } from './deliver.ts';

/** What names the file on the command line. */
const field = 'GARDEN';

/** A garden file that is to be changed; anything else is refused. */
export function readForChange(path: string): GardenText {
  if (statSync(path, { throwIfNoEntry: false })?.isFile() === false)
    throw refuse('garden-no-file', { field, exit: 3, values: { value: path } });
  const file = readGardenText(path, field);
  const wrong = file.changes.find(({ code }) => code === 'not-a-garden' || code === 'schema');
  if (wrong) throw refuse('garden-not-one', { field, exit: 3, values: { file: path, found: wrong.found } });
  return file;
}

type Entries = { observations: Observation; jobs: JobMark };

/** The file as it will be: as it was written, with one entry more on a planting. */
export function gardenWith<List extends keyof Entries>(
  { text, found, garden }: GardenText,
  planting: GardenPlanting,
  list: List,
  entry: Entries[List],
  path: string,
): string {
  const most = gardenEntries[list];
  if (garden[list].length >= most)
    throw refuse(list === 'jobs' ? 'garden-full-jobs' : 'garden-full', {
      field,
      exit: 3,
      values: { file: path, most },
    });
  const { plantings } = found as { plantings: unknown };
  const hasId = Array.isArray(plantings) && plantings.some((one) => one?.id === planting.id);
  // an id that was given in reading has to be written down to be found again
  const made = hasId
    ? withEntry(text, list, entry)
    : `${JSON.stringify({ ...garden, [list]: [...garden[list], entry] }, null, 2)}\n`;
  if (Buffer.byteLength(made) > gardenBytes) throw gardenTooBig(path, field);
  return made;
}

/** The file in the making, which replaces the garden unless something else has changed it since it was read or is about to. */
export function gardenDraft(path: string, before: Buffer, text: string): Pick<WholeFile, 'keep' | 'drop'> {
  const file = wholeFile(path, field);
  file.write(text);
  return {
    drop: file.drop,
    keep: () =>
      file.keep(() => {
        // asked in this order: who was about to change it a moment ago may have done so since
        if (!file.isAlone() || !readBounded(path, gardenBytes)?.equals(before))
          throw refuse('garden-changed-meanwhile', { field, exit: 3, values: { file: path } });
      }),
  };
}

/** Files that something else changes all the time are given up. */
const mostTries = 12;
/** Two that met wait for times of their own, longer from try to try, ms. */
const longestWaitMs = 25;

/** A change goes into the file and is answered for: both, or neither. */
export async function deliverChange(
  make: () => { answer: Answer; keep: () => void },
  raw: RawOutputOptions,
): Promise<void> {
  for (let tries = 1; ; tries++) {
    const { answer, keep } = make();
    try {
      return await deliver(answer, raw, keep);
    } catch (error) {
      if (refusalOf(error)?.code !== 'garden-changed-meanwhile' || tries === mostTries) throw error;
      await setTimeout(Math.random() * longestWaitMs * tries);
    }
  }
}
