import type { MessageKey } from '@neckfall/words';
import type { RawHandout } from '../answer/handout-answer.ts';
import { readSetting } from '../options/place-options.ts';
import { speakerFor } from '../options/speaker-for.ts';
import type { Sink } from '../output/open-sink.ts';
import { print } from '../output/print.ts';
import { tell } from '../output/tell.ts';
import { refuseFile, writeSheetFiles } from '../print/sheet-files.ts';
import { type SheetForm, sheetForms } from '../print/sheet-forms.ts';
import { refusalOf, refuse } from '../refusal/refusal.ts';
import { refusalLine } from '../refusal/refusal-line.ts';
import { parseChoice } from '../values/choice.ts';
import { crewFor } from './batch.ts';
import type { SheetOfRow } from './handout-of-row.ts';
import { loadWordsFor, type RowError } from './line-maker.ts';
import { openRows } from './open-rows.ts';
import { runBatch } from './run-batch.ts';
import { sheetNames } from './sheet-names.ts';

type Line = { id: string | number } & (SheetOfRow | { error: RowError });

/** `handout --batch`: the sheets of all rows as files in a folder; a row at fault is told, and the others go on. */
export async function handoutBatch(town: string | undefined, path: string, raw: RawHandout): Promise<void> {
  const speaker = speakerFor(raw);
  const { say, any } = speaker;
  const bar = (field: string, why: MessageKey) =>
    refuse('not-in-batch', { field, values: { why: say(why) } });
  if (town !== undefined) throw bar(town, 'clash.batch-has-places');
  if (raw.at !== undefined) throw bar('--at', 'clash.batch-has-places');
  if (raw.json) throw bar('--json', 'clash.sheets-are-files');
  if (raw.weather !== undefined) throw bar('--weather', 'clash.record-of-one-place');
  if (raw.out === undefined) throw refuse('sheet-no-folder', { field: '--out' });
  const folder = raw.out;
  const forms =
    raw.as === undefined
      ? sheetForms
      : formsOf(parseChoice(raw.as, '--as', [...sheetForms, 'both'], { any }));
  const job = { command: 'handout', raw, setting: readSetting(raw) } as const;
  await loadWordsFor(job);
  const rows = openRows(path, 'handout', speaker);
  const seen = { rows: 0, failed: 0, first: '' };
  refuseFile(folder);
  const nameOf = sheetNames();
  const write = async (line: Line) => {
    if ('error' in line) return fail(line.id, line.error.message);
    const { writeSheet } = await import('../print/write-sheet.ts');
    const written = await writeSheet(line.sheet, forms);
    try {
      if ('missing' in written)
        throw refuse('sheet-letters', { values: { letters: written.missing.slice(0, 12).join(' ') } });
      writeSheetFiles(folder, nameOf(line.called), written);
      seen.rows++;
    } catch (error) {
      const refusal = refusalOf(error);
      // a file that is not ours is the row's; a full disk is everybody's
      if (refusal === null || refusal.field === '--out') throw error;
      fail(line.id, refusalLine(refusal, speaker));
    }
  };
  await runBatch(rows, 'handout', path, crewFor(job), sinkOf(write), speaker);
  if (seen.rows === 0) {
    const values = { value: path, rows: seen.failed, first: seen.first };
    throw refuse('batch-none-answered', { field: '--batch', exit: 3, values });
  }
  if (seen.failed > 0) tell(say('sheets.some-failed', { failed: seen.failed }));
  await print(`${say('sheets.written', { rows: seen.rows, folder, files: seen.rows * forms.length })}\n`);

  function fail(id: string | number, why: string): void {
    const where = typeof id === 'number' ? say('sheets.row-line', { line: id }) : id;
    tell(say('sheets.row', { where, why }));
    if (seen.failed === 0) seen.first = why;
    seen.failed++;
  }
}

const formsOf = (as: SheetForm | 'both'): readonly SheetForm[] => (as === 'both' ? sheetForms : [as]);

/** Takes the lines that a batch answers with, one at a time. */
function sinkOf(write: (line: Line) => Promise<void>): Sink {
  return {
    async write(text) {
      for (const line of text.split('\n')) if (line !== '') await write(JSON.parse(line));
      return true;
    },
    keep: () => {},
    drop: () => {},
  };
}
