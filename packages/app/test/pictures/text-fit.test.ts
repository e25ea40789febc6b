import fc from 'fast-check';
import { expect, test } from 'vitest';
import { textWidth, wrapText } from '../../src/pictures/text-fit.ts';
import { seeded } from './scenes.ts';

test('wrapping keeps every word in order, and only a single word may stand out', () => {
  const words = fc.array(fc.stringMatching(/^[a-zA-Z–,]{1,14}$/), { minLength: 1, maxLength: 12 });
  fc.assert(
    fc.property(words, fc.integer({ min: 40, max: 300 }), (list, width) => {
      const lines = wrapText(list.join(' '), width, 14);
      expect(lines.join(' ')).toBe(list.join(' '));
      for (const line of lines) {
        expect(textWidth(line, 14) <= width || !line.includes(' ')).toBe(true);
      }
    }),
    seeded,
  );
});
