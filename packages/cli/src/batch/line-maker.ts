import { languages, loadLanguage, type Speaker, speaker } from '@neckfall/words';
import type { RawHandout } from '../answer/handout-answer.ts';
import type { RawSeason } from '../answer/season-answer.ts';
import type { Setting } from '../options/place-options.ts';
import type { RawQuestionOptions } from '../options/question-options.ts';
import { jsonText } from '../output/json-text.ts';
import { ownAssets } from '../place/assets.ts';
import { ownFault } from '../refusal/own-fault.ts';
import { type Refusal, refusalOf } from '../refusal/refusal.ts';
import { refusalLine } from '../refusal/refusal-line.ts';
import { answersOfRow } from './answers-of-row.ts';
import { type BatchCommand, columnName } from './columns.ts';
import { handoutOfRow } from './handout-of-row.ts';
import { type Row, refuseFault } from './rows.ts';
import { seasonOfRow } from './season-of-row.ts';
import { sharedGround } from './shared-ground.ts';
import { whereOfRow } from './where-of-row.ts';

/** What is common to all rows: plain values, so that another thread can be handed them. */
export type BatchJob = {
  command: BatchCommand;
  raw: RawSeason & RawHandout & RawQuestionOptions;
  setting: Setting;
};

/** A row's answer as one line of JSON, and what it failed for. */
export type Line = { text: string; failed: RowError | null };

export type RowError = { code: string; field: string | null; message: string };

/** Answers rows one by one. A row at fault gets a line that says so; a fault of the data files is thrown. */
export function lineMaker({ command, raw, setting }: BatchJob, assets = ownAssets): (row: Row) => Line {
  const metric = speaker('metric');
  const open = sharedGround(assets);
  return (row) => {
    // what is no row cannot be trusted to have named itself
    const id = row.fault ? row.line : (row.cells.id ?? row.line);
    try {
      refuseFault(row);
      return { text: jsonText({ id, ...documentOf(row) }), failed: null };
    } catch (thrown) {
      const refusal = refusalOf(thrown) ?? ownFault(thrown);
      if (refusal.exit === 3) throw thrown;
      const error = errorOf(refusal, metric);
      return { text: jsonText({ id, error }), failed: error };
    }
  };

  function documentOf({ cells }: Row): object {
    if (command === 'handout') return handoutOfRow(cells, raw, setting, open);
    const answer = {
      season: () => seasonOfRow(cells, raw, setting, metric, open),
      where: () => whereOfRow(cells, setting, metric, open),
      answer: () => answersOfRow(cells, raw, setting, metric, open),
    }[command]();
    return answer.json() as object;
  }
}

/** Has to be done in every thread before rows are answered: sheets are told in the language that their row asks for. */
export async function loadWordsFor({ command }: BatchJob): Promise<void> {
  if (command === 'handout') await Promise.all(languages.map(loadLanguage));
}

/** A refusal in the terms of a table: columns in place of options. */
function errorOf(refusal: Refusal, metric: Speaker): RowError {
  const { code, field } = refusal;
  // no record of the weather goes with a batch, so its years are not offered
  const said: Refusal = code === 'date-limits' ? { ...refusal, code: 'row-date-limits' } : refusal;
  return {
    code,
    field: field === '--at' ? 'latitude' : field && columnName(field),
    message: refusalLine(said, metric)
      .replace('--at LAT,LON', '--at')
      .replace(/--[a-z-]+/g, columnName),
  };
}
