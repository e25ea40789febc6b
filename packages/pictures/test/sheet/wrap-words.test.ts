import fc from 'fast-check';
import { expect, test } from 'vitest';
import { wrapWords } from '../../src/sheet/wrap-words.ts';
import { seeded } from '../scenes.ts';

const perLetter = (word: string) => [...word].length;

test('breaks at spaces, as late as it can', () => {
  expect(wrapWords('tops go over in July', 9, perLetter)).toEqual(['tops go', 'over in', 'July']);
});

test('cuts a word that no line holds', () => {
  expect(wrapWords('a Llanfairpwll b', 5, perLetter)).toEqual(['a', 'Llanf', 'airpw', 'll b']);
});

test('loses and adds nothing, and no line is wider than it may be', () => {
  const words = fc.array(fc.string({ minLength: 1, maxLength: 20 }).filter((word) => /^\S+$/.test(word)));
  fc.assert(
    fc.property(words, fc.integer({ min: 3, max: 40 }), (all, width) => {
      const lines = wrapWords(all.join(' '), width, perLetter);
      expect(lines.join('').replace(/ /g, '')).toBe(all.join(''));
      for (const line of lines) expect(perLetter(line)).toBeLessThanOrEqual(width);
    }),
    seeded,
  );
});
