import { withoutMark } from '../output/csv.ts';
import { refuse } from '../refusal/refusal.ts';
import type { Column } from './columns.ts';
import { type CsvRecord, csvReader, longestRecord } from './csv-records.ts';

/** A line of the file on its way to be answered: its cells by column, empty ones left out. */
export type Row = {
  line: number;
  cells: Partial<Record<Column, string>>;
  /** Why the line is no row at all. */
  fault: 'too-long' | 'encoding' | { received: number; expected: number } | null;
};

/** The records of a text that are not blank. */
export async function* recordsOf(pieces: AsyncIterable<string>): AsyncGenerator<CsvRecord> {
  const reader = csvReader();
  for await (const piece of pieces) yield* reader.push(piece).filter(isFilled);
  yield* reader.end().filter(isFilled);
}

function isFilled({ cells, fault }: CsvRecord): boolean {
  return fault !== null || cells.some((cell) => cell.trim() !== '');
}

export function rowOf({ line, cells, fault }: CsvRecord, columns: readonly Column[]): Row {
  const named: Row['cells'] = {};
  for (const [at, column] of columns.entries()) {
    if (cells[at]?.trim()) named[column] = withoutMark(cells[at]);
  }
  return { line, cells: named, fault: fault ?? faultOf(cells, columns.length) };
}

function faultOf(cells: readonly string[], expected: number): Row['fault'] {
  if (cells.some((cell) => cell.includes('\ufffd'))) return 'encoding';
  return cells.length === expected ? null : { received: cells.length, expected };
}

export function refuseFault({ line, fault }: Row): void {
  if (fault === null) return;
  const values = { line };
  if (fault === 'too-long') throw refuse('row-too-long', { values: { ...values, limit: longestRecord } });
  if (fault === 'encoding') throw refuse('row-encoding', { values });
  throw refuse('row-cells', { values: { ...values, ...fault } });
}
