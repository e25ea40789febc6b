import { expect, test } from 'vitest';
import { editDistance } from '../../src/index.ts';

test('edit distance counts letters added, dropped, changed and swapped', () => {
  expect(editDistance('', 'abc')).toBe(3);
  expect(editDistance('kitten', 'sitting')).toBe(3);
  expect(editDistance('ab', 'ba')).toBe(1);
  expect(editDistance('same', 'same')).toBe(0);
});
