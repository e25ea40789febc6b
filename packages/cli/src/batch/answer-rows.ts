import type { Line, RowError } from './line-maker.ts';
import type { Row } from './rows.ts';

/** The lines of some rows, ready to be written. */
export type Answered = {
  text: string;
  rows: number;
  failed: number;
  firstFailure: RowError | null;
};

export function answerRows(rows: readonly Row[], lineOf: (row: Row) => Line): Answered {
  let text = '';
  let failed = 0;
  let firstFailure: RowError | null = null;
  for (const row of rows) {
    const line = lineOf(row);
    text += line.text;
    if (line.failed === null) continue;
    failed++;
    firstFailure ??= line.failed;
  }
  return { text, rows: rows.length, failed, firstFailure };
}
