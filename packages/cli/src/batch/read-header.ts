import type { Speaker } from '@neckfall/words';
import { nearest } from '../refusal/nearest.ts';
import { refuse } from '../refusal/refusal.ts';
import { type BatchCommand, type Column, columnsOf } from './columns.ts';

/** A header quoted in a message is cut here. */
const longestQuote = 60;

/** The columns of a batch in the order of its file, or a refusal of the file. */
export function readHeader(
  cells: readonly string[],
  command: BatchCommand,
  path: string,
  { all }: Speaker,
): Column[] {
  const known: readonly string[] = columnsOf[command];
  const details = { field: '--batch', exit: 3, expected: all(known) } as const;
  if (cells.some((cell) => /[\0\ufffd]/.test(cell))) {
    throw refuse('batch-encoding', { ...details, values: { value: path } });
  }
  const names = cells.map((cell) => cell.trim().toLowerCase());
  for (const [at, name] of names.entries()) {
    const column = cells[at].trim().slice(0, longestQuote);
    if (!known.includes(name)) {
      const near = nearest(name.slice(0, longestQuote), known);
      throw refuse('batch-column', { ...details, values: { value: path, column }, nearest: near });
    }
    if (names.indexOf(name) !== at) {
      throw refuse('batch-column-twice', { ...details, values: { value: path, column } });
    }
  }
  const needed = command === 'handout' && names.includes('place') ? [] : ['latitude', 'longitude'];
  for (const column of needed) {
    if (names.includes(column)) continue;
    const values = { value: path, column };
    throw refuse(command === 'handout' ? 'batch-no-place' : 'batch-column-missing', { ...details, values });
  }
  return names as Column[];
}
