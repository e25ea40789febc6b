import fc from 'fast-check';
import { expect, test } from 'vitest';
import { openKeys, packKeys } from '../../src/places/key-table.ts';
import { misspeltKeys, type SpellingMatch } from '../../src/places/misspelt-keys.ts';

/** Optimal string alignment straight from its definition. */
function edits(a: string, b: string): number {
  if (a === '' || b === '') return a.length + b.length;
  const [headA, headB] = [a.slice(0, -1), b.slice(0, -1)];
  const least = [
    edits(headA, b) + 1,
    edits(a, headB) + 1,
    edits(headA, headB) + (a.at(-1) === b.at(-1) ? 0 : 1),
  ];
  if (a.length > 1 && b.length > 1 && a.at(-1) === b.at(-2) && a.at(-2) === b.at(-1)) {
    least.push(edits(a.slice(0, -2), b.slice(0, -2)) + 1);
  }
  return Math.min(...least);
}

function naive(keys: readonly string[], query: string, maxEdits: number, match: SpellingMatch) {
  return keys.flatMap((key, row) => {
    const beginnings = match === 'whole' ? [key] : [...key, ''].map((_, i) => key.slice(0, i));
    const least = Math.min(...beginnings.map((beginning) => edits(beginning, query)));
    return least <= maxEdits ? [[row, least]] : [];
  });
}

const letters = fc.constantFrom('a', 'b', 'c');
const word = fc.string({ unit: letters, minLength: 1, maxLength: 6 });

test.each<SpellingMatch>(['prefix', 'whole'])(
  'walking the sorted keys finds what trying every key finds (%s)',
  (match) => {
    fc.assert(
      fc.property(
        fc.array(word, { minLength: 1, maxLength: 25 }),
        word,
        fc.integer({ min: 1, max: 2 }),
        (words, query, most) => {
          const keys = words.sort();
          const found: [number, number][] = [];
          misspeltKeys(
            openKeys(packKeys(keys)),
            new TextEncoder().encode(query),
            most,
            match,
            (row, count) => {
              found.push([row, count]);
            },
          );
          expect(found).toEqual(naive(keys, query, most, match));
        },
      ),
      { seed: 2, numRuns: 300 },
    );
  },
);

test('a query much longer than any name finds nothing', () => {
  const query = new TextEncoder().encode('a'.repeat(5000));
  misspeltKeys(openKeys(packKeys(['aaa'])), query, 2, 'prefix', () => expect.unreachable());
});
