import { randomBytes } from 'node:crypto';
import { oddSentence } from '@neckfall/answers';
import { drawnId, idBytes, type Observation, odd } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { recordDocument } from '../documents/record-document.ts';
import { recordRows } from '../documents/record-rows.ts';
import { changeSentences } from '../files/garden-file.ts';
import { findPlanting } from '../options/find-planting.ts';
import { type RawRecord, readRecordOptions } from '../options/record-options.ts';
import { csv } from '../output/csv.ts';
import { refuse } from '../refusal/refusal.ts';
import { recordText } from '../text/record-text.ts';
import type { Answer } from './answer.ts';
import { gardenDraft, gardenWith, readForChange } from './change-garden.ts';

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
  const file = readForChange(path);
  const { garden } = file;
  const planting = findPlanting(garden, raw.planting, path, speaker);
  const observation: Observation = {
    id: drawnId(randomBytes(idBytes)),
    plantingId: planting.id,
    ...seen,
  };
  const text = gardenWith(file, planting, 'observations', observation, path);
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
    keep: () => gardenDraft(path, file.bytes, text).keep(),
  };
}
