import { type Observation, observedNumbers } from '@neckfall/engine';
import type { CsvValue } from '../output/csv.ts';

/** One row an observation; empty where nothing was noted. */
export function recordRows(held: readonly Observation[]): Record<string, CsvValue>[] {
  return held.map((entry) => ({
    date: entry.date,
    ...Object.fromEntries(observedNumbers.map((field) => [field, entry[field] ?? null])),
    fedProduct: entry.fedProduct ?? null,
    lifted: entry.lifted ?? null,
    note: entry.note ?? null,
    id: entry.id,
  }));
}
