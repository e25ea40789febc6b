import { misspeltKeys, type SpellingMatch } from './misspelt-keys.ts';
import { type NameTable, type RankedTown, rankedTowns } from './ranked-towns.ts';

/** Edits forgiven by length of the query: under 3 letters any two names would be alike. */
function forgivenEdits(length: number): number {
  return length < 3 ? 0 : length < 6 ? 1 : 2;
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
