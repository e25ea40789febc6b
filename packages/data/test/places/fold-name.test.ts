import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { foldName, foldPrefix } from '../../src/places/fold-name.ts';

describe('folding a name', () => {
  test.each([
    ['Zürich', 'zurich'],
    ['ZU\u0308RICH', 'zurich'],
    ['Gießen', 'giessen'],
    ['Tromsø', 'tromso'],
    ['Łódź', 'lodz'],
    ['Iğdır', 'igdir'],
    ['Þórshöfn', 'thorshofn'],
    ["L'Aquila", 'laquila'],
    ['L’Aquila', 'laquila'],
    ['  Saint-Étienne ', 'saint etienne'],
    ['St. Louis', 'saint louis'],
    ['Ft Worth', 'fort worth'],
    ['Frankfurt (Oder)', 'frankfurt oder'],
    ['St', 'st'],
    ['constructor x', 'constructor x'],
    ['—', ''],
  ])('%s is compared as "%s"', (name, folded) => {
    expect(foldName(name)).toBe(folded);
  });

  test('is idempotent', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string({ unit: 'binary' }), fc.string({ unit: 'grapheme' })), (text) => {
        expect(foldName(foldName(text))).toBe(foldName(text));
      }),
      { seed: 1, numRuns: 500 },
    );
  });

  test('of a name still typed keeps the space that ends a word', () => {
    expect(foldPrefix('New ')).toBe('new ');
    expect(foldPrefix(' St. ')).toBe('saint ');
    expect(foldPrefix('St')).toBe('st');
    expect(foldPrefix(' ')).toBe('');
  });
});
