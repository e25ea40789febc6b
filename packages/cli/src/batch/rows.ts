import { batchLines, longestCell, longestRecord } from '@neckfall/engine';
import { withoutMark } from '../output/csv.ts';
import { refuse } from '../refusal/refusal.ts';
import type { Column } from './columns.ts';
import { type CsvRecord, csvReader } from './csv-records.ts';

/** A line of the file on its way to be answered: its cells by column, empty ones left out. */
export type Row = {
  line: number;
  cells: Partial<Record<Column, string>>;
  /** Why the line is no row at all. */
  fault: 'too-long' | 'long-cell' | 'encoding' | { received: number; expected: number } | null;
};

/** The records of a text that are not blank. Throws `tooMany` at a line beyond the most that a batch may have. */
export async function* recordsOf(
  pieces: AsyncIterable<string>,
  tooMany: () => Error,
): AsyncGenerator<CsvRecord> {
  const reader = csvReader();
  const filled = (records: CsvRecord[]) => {
    if ((records.at(-1)?.line ?? 0) > batchLines) throw tooMany();
    return records.filter(isFilled);
  };
  for await (const piece of pieces) yield* filled(reader.push(piece));
  yield* filled(reader.end());
}

function isFilled({ cells, fault }: CsvRecord): boolean {
  return fault !== null || cells.some((cell) => cell.trim() !== '');
}

export function rowOf({ line, cells, fault }: CsvRecord, columns: readonly Column[]): Row {
  const named: Row['cells'] = {};
  for (const [at, column] of columns.entries()) {
    if (cells[at]?.trim()) named[column] = withoutMark(cells[at]);
  }
  return { line, cells: named, fault: fault ?? faultOf(cells, columns) };
}

/** Of words that a sheet sets, how many it has room for is told better where they are read. */
const ofAnyLength: readonly (Column | undefined)[] = ['heading', 'note'];

function faultOf(cells: readonly string[], columns: readonly Column[]): Row['fault'] {
  const expected = columns.length;
  if (cells.some((cell) => cell.includes('\ufffd'))) return 'encoding';
  if (cells.some((cell, at) => cell.length > longestCell && !ofAnyLength.includes(columns[at])))
    return 'long-cell';
  return cells.length === expected ? null : { received: cells.length, expected };
}

export function refuseFault({ line, fault }: Row): void {
  if (fault === null) return;
  const values = { line };
  if (fault === 'too-long') throw refuse('row-too-long', { values: { ...values, limit: longestRecord } });
  if (fault === 'long-cell') throw refuse('row-long-cell', { values: { ...values, limit: longestCell } });
  if (fault === 'encoding') throw refuse('row-encoding', { values });
  throw refuse('row-cells', { values: { ...values, ...fault } });
}
