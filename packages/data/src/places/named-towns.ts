import { prefixRows } from './key-table.ts';
import { type NameTable, type RankedTown, rankedTowns } from './ranked-towns.ts';

/** Calls `found` with every town of that folded name or other spelling; with `prefix`, of names beginning so too. */
export function eachNamed(
  tables: readonly NameTable[],
  name: Uint8Array,
  match: 'whole' | 'prefix',
  found: (town: number, weight: number, isWhole: boolean) => void,
): void {
  for (const { keys, townOf, weightOf } of tables) {
    const { from, exactTo, to } = prefixRows(keys, name);
    const end = match === 'whole' ? exactTo : to;
    for (let row = from; row < end; row++) found(townOf(row), weightOf(row), row < exactTo);
  }
}

/** Towns of that folded name or other spelling, the most populous first. */
export function townsCalled(tables: readonly NameTable[], name: Uint8Array, limit: number): RankedTown[] {
  const { offer, best } = rankedTowns(limit);
  eachNamed(tables, name, 'whole', (town, weight) => offer({ town, weight, distance: 0 }));
  return best;
}
