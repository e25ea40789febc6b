import { foldPrefix } from './fold-name.ts';
import { type Gazetteer, townAt } from './gazetteer.ts';
import { keyBytes, prefixRows } from './key-table.ts';
import { misspeltKeys, type SpellingMatch } from './misspelt-keys.ts';
import { type NameTable, nameTables, type RankedTown, rankedTowns } from './ranked-towns.ts';
import type { Town } from './town.ts';

const MOST_TOWNS = 100;

/** Edits forgiven by length of the query: under 3 letters any two names would be alike. */
function forgivenEdits(length: number): number {
  return length < 3 ? 0 : length < 6 ? 1 : 2;
}

/**
 * Towns whose name, or other spelling, begins with the query (accents, case and punctuation ignored). Those of
 * exactly that name come first, the most populous before the others; then the rest in the same order. Where no
 * name begins so, one misspelling is forgiven, or two, from 3 and 6 letters on. At most `limit` (1 to
 * 100) different towns; none for an empty query.
 */
export function findTowns(gazetteer: Gazetteer, query: string, limit: number): Town[] {
  if (!Number.isInteger(limit) || limit < 1 || limit > MOST_TOWNS) {
    throw new RangeError(`limit ${limit}: a whole number from 1 to ${MOST_TOWNS} was expected`);
  }
  const bytes = keyBytes(foldPrefix(query));
  if (bytes === null) return [];
  const tables = nameTables(gazetteer);
  const begun = townsBeginningWith(tables, bytes, limit);
  const found = begun.length > 0 ? begun : misspeltTowns(tables, bytes, 'prefix', limit);
  return found.map(({ town }) => townAt(gazetteer, town));
}

function townsBeginningWith(tables: readonly NameTable[], prefix: Uint8Array, limit: number): RankedTown[] {
  const { offer, best } = rankedTowns(limit);
  for (const { keys, townOf, weightOf } of tables) {
    const { from, exactTo, to } = prefixRows(keys, prefix);
    for (let row = from; row < to; row++) {
      offer({ town: townOf(row), distance: row < exactTo ? 0 : 1, weight: weightOf(row) });
    }
  }
  return best;
}

/** Towns with the fewest edits between the query and their name, if few enough. */
export function misspeltTowns(
  tables: readonly NameTable[],
  query: Uint8Array,
  match: SpellingMatch,
  limit: number,
): RankedTown[] {
  for (let edits = 1; edits <= forgivenEdits(query.length); edits++) {
    const { offer, best } = rankedTowns(limit);
    for (const { keys, townOf, weightOf } of tables) {
      misspeltKeys(keys, query, edits, match, (row, distance) => {
        offer({ town: townOf(row), distance, weight: weightOf(row) });
      });
    }
    if (best.length > 0) return best;
  }
  return [];
}
