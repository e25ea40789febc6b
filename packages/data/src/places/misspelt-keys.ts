import type { KeyTable } from './key-table.ts';

/** 'prefix': the best-fitting beginning of a key is compared; 'whole': all of it. */
export type SpellingMatch = 'prefix' | 'whole';

/**
 * Calls `found` with every row whose key is at most `maxEdits` edits from the query, in ascending order. An
 * edit is a letter added, dropped, replaced, or swapped with its neighbour (optimal string alignment).
 *
 * The sorted keys are walked as a tree of letters: the alignment table is kept for the letters shared with the
 * key before, and a branch is left as soon as no key in it can be near enough.
 */
export function misspeltKeys(
  keys: KeyTable,
  query: Uint8Array,
  maxEdits: number,
  match: SpellingMatch,
  found: (row: number, edits: number) => void,
): void {
  const m = query.length;
  if (m > keys.longest + maxEdits) return;
  const width = m + 1;
  const table = new Uint8Array((keys.longest + 1) * width);
  const bestAt = new Uint8Array(keys.longest + 1); // least edits for a beginning of up to this many letters
  for (let j = 0; j <= m; j++) table[j] = j;
  bestAt[0] = m;
  let known = 0; // letters of the key before for which the table holds

  for (let row = 0; row < keys.count; ) {
    const start = keys.offsets[row];
    const length = keys.offsets[row + 1] - start;
    let depth = row === 0 ? 0 : Math.min(keys.shared[row], known);
    let isSettled = false; // deeper letters cannot change the answer of this branch
    while (depth < length && !isSettled) {
      depth++;
      const letter = keys.bytes[start + depth - 1];
      const here = depth * width;
      const above = here - width;
      let least = depth;
      table[here] = depth;
      for (let j = 1; j <= m; j++) {
        let edits = table[above + j - 1] + (letter === query[j - 1] ? 0 : 1);
        if (table[above + j] + 1 < edits) edits = table[above + j] + 1;
        if (table[here + j - 1] + 1 < edits) edits = table[here + j - 1] + 1;
        if (
          depth > 1 &&
          j > 1 &&
          letter === query[j - 2] &&
          keys.bytes[start + depth - 2] === query[j - 1] &&
          table[above - width + j - 2] + 1 < edits
        ) {
          edits = table[above - width + j - 2] + 1;
        }
        table[here + j] = edits;
        if (edits < least) least = edits;
      }
      bestAt[depth] = Math.min(bestAt[depth - 1], table[here + m]);
      isSettled = least > maxEdits || (match === 'prefix' && least >= bestAt[depth]);
    }
    known = depth;
    const edits = match === 'prefix' ? bestAt[depth] : isSettled ? maxEdits + 1 : table[depth * width + m];
    if (edits <= maxEdits) found(row, edits);
    row++;
    if (isSettled) {
      for (; row < keys.count && keys.shared[row] >= depth; row++) if (edits <= maxEdits) found(row, edits);
    }
  }
}
