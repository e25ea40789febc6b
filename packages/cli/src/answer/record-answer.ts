import { randomBytes } from 'node:crypto';
import { statSync } from 'node:fs';
import { oddSentence } from '@neckfall/answers';
import {
  drawnId,
  type GardenPlanting,
  gardenBytes,
  gardenEntries,
  idBytes,
  type Observation,
  odd,
} from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { recordDocument } from '../documents/record-document.ts';
import { recordRows } from '../documents/record-rows.ts';
import { changeSentences, type GardenText, gardenTooBig, readGardenText } from '../files/garden-file.ts';
import { withEntry } from '../files/json-list.ts';
import { readBounded } from '../files/read-bounded.ts';
import { findPlanting } from '../options/find-planting.ts';
import { type RawRecord, readRecordOptions } from '../options/record-options.ts';
import { csv } from '../output/csv.ts';
import { wholeFile } from '../output/whole-file.ts';
import { refuse } from '../refusal/refusal.ts';
import { recordText } from '../text/record-text.ts';
import type { Answer } from './answer.ts';

/** What names the file on the command line. */
const field = 'GARDEN';

/** What the garden file holds of a planting with what was just seen; `keep` puts that into the file. */
export function recordAnswer(
  path: string,
  raw: RawRecord,
  speaker: Speaker,
  given: Speaker,
): { answer: Answer; keep: () => void } {
  if (raw.planting === undefined)
    throw refuse('missing-option', { field: '--planting', expected: '--planting ID' });
  const { seen, today } = readRecordOptions(raw, given);
  if (statSync(path, { throwIfNoEntry: false })?.isFile() === false)
    throw refuse('garden-no-file', { field, exit: 3, values: { value: path } });
  const file = readGardenText(path, field);
  const wrong = file.changes.find(({ code }) => code === 'not-a-garden' || code === 'schema');
  if (wrong) throw refuse('garden-not-one', { field, exit: 3, values: { file: path, found: wrong.found } });
  const { garden } = file;
  const planting = findPlanting(garden, raw.planting, path, speaker);
  const observation: Observation = {
    id: drawnId(randomBytes(idBytes)),
    plantingId: planting.id,
    ...seen,
  };
  const text = textWith(file, planting, observation, path);
  const others = garden.observations.filter(({ plantingId }) => plantingId === planting.id);
  const held = [...others, observation].sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0));
  const questions = odd(observation, planting, others, today).map((value) => ({
    code: value.code,
    sentence: oddSentence(value, speaker),
  }));
  const warnings = changeSentences(file.changes, field, path, speaker);
  const known = { file: path, planting, held, recorded: observation };
  return {
    answer: {
      text: () => recordText(known, speaker),
      json: () => recordDocument({ ...known, questions, warnings }),
      csv: () => csv(recordRows(held)),
      warnings: [...warnings, ...questions.map(({ sentence }) => sentence)],
    },
    keep: () => replace(path, file.bytes, text),
  };
}

/** The file as it will be: as it was written, with one entry more. */
function textWith(
  { text, found, garden }: GardenText,
  planting: GardenPlanting,
  observation: Observation,
  path: string,
): string {
  const most = gardenEntries.observations;
  if (garden.observations.length >= most)
    throw refuse('garden-full', { field, exit: 3, values: { file: path, most } });
  const { plantings } = found as { plantings: unknown };
  const hasId = Array.isArray(plantings) && plantings.some((entry) => entry?.id === planting.id);
  // an id that was given in reading has to be written down to be found again
  const made = hasId
    ? withEntry(text, 'observations', observation)
    : `${JSON.stringify({ ...garden, observations: [...garden.observations, observation] }, null, 2)}\n`;
  if (Buffer.byteLength(made) > gardenBytes) throw gardenTooBig(path, field);
  return made;
}

/** Replaces the file, unless something else has changed it since it was read or is about to. */
function replace(path: string, before: Buffer, text: string): void {
  const file = wholeFile(path, field);
  file.write(text);
  file.keep(() => {
    // asked in this order: who was about to change it a moment ago may have done so since
    if (!file.isAlone() || !readBounded(path, gardenBytes)?.equals(before))
      throw refuse('garden-changed-meanwhile', { field, exit: 3, values: { file: path } });
  });
}
