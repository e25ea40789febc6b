import fc from 'fast-check';
import { expect, test } from 'vitest';
import { textWidth, wrapText } from '../../src/pictures/text-fit.ts';
import { seeded } from './scenes.ts';

// DejaVu Serif 2.37, advance widths of its Book face as Chromium measures them, em: the widest usual serif face
const dejaVuSerif = [
  ['good in 8 years in 10', 10.65],
  ['run to flower: 1 plant in 10', 13.68],
  ['days long enough from 23 March', 16.85],
  ['big enough and warm from 13 May', 17.89],
  ['longest day 16 h 38 min', 12.2],
  ['61 mm across', 7.07],
  ['Intermediate-day,', 8.92],
] as const;

test.each(dejaVuSerif)('“%s” is taken as no narrower than it is, and not much wider', (text, ems) => {
  expect(textWidth(text, 1)).toBeGreaterThanOrEqual(ems);
  expect(textWidth(text, 1)).toBeLessThan(ems * 1.1);
});

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
