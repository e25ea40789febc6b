import type { MessageKey } from '@neckfall/words';
import type { RawSeason } from '../answer/season-answer.ts';
import { readSetting } from '../options/place-options.ts';
import type { RawQuestionOptions } from '../options/question-options.ts';
import { speakerFor } from '../options/speaker-for.ts';
import { openSink } from '../output/open-sink.ts';
import { tell } from '../output/tell.ts';
import { refuse } from '../refusal/refusal.ts';
import type { BatchCommand } from './columns.ts';
import { type Crew, threadCrew } from './crew.ts';
import type { BatchJob } from './line-maker.ts';
import { openRows } from './open-rows.ts';
import { ownCrew } from './own-crew.ts';
import { runBatch } from './run-batch.ts';

/** `--batch FILE`, or `-`: a line of JSON for each row of a file. */
export async function batch(
  command: Exclude<BatchCommand, 'handout'>,
  town: string | undefined,
  path: string,
  raw: RawSeason & RawQuestionOptions,
): Promise<void> {
  const speaker = speakerFor({ ...raw, json: true, csv: false });
  const bar = (field: string, why: MessageKey) =>
    refuse('not-in-batch', { field, values: { why: speaker.say(why) } });
  if (town !== undefined) throw bar(town, 'clash.batch-has-places');
  if (raw.at !== undefined) throw bar('--at', 'clash.batch-has-places');
  if (raw.csv) throw bar('--csv', 'clash.batch-is-lines');
  if (raw.weather !== undefined) throw bar('--weather', 'clash.record-of-one-place');
  const job = { command, raw, setting: readSetting(raw) };
  const rows = openRows(path, command, speaker);
  const warning = await runBatch(rows, command, path, crewFor(job), await openSink(raw.out), speaker);
  if (warning !== null) tell(warning);
}

/** Threads run the bundled program; run from its sources, the work is done here. */
export function crewFor(job: BatchJob): Crew {
  const program = new URL(import.meta.url);
  return program.pathname.endsWith('.mjs') ? threadCrew(job, program) : ownCrew(job);
}
