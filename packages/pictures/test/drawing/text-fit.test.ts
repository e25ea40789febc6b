import fc from 'fast-check';
import { expect, test } from 'vitest';
import { boldWidth, textWidth, wrapText } from '../../src/drawing/text-fit.ts';
import { seeded } from '../scenes.ts';

// Liberation Sans 1.07 (as wide as Helvetica), advance widths of its regular and bold faces as Chromium measures them, em
const helvetica = [
  ['good in 8 years in 10', 9.28, 9.89],
  ['run to flower: 1 plant in 10', 11.51, 12.45],
  ['days long enough from 23 March', 14.62, 15.67],
  ['big enough and warm from 13 May', 15.45, 16.45],
  ['longest day 16 h 38 min', 10.62, 11.28],
  ['61 mm across', 6.28, 6.67],
  ['Intermediate-day,', 7.71, 8.21],
] as const;

test.each(helvetica)('“%s” is taken as no narrower than it is, and not much wider', (text, ems, bold) => {
  expect(textWidth(text, 1)).toBeGreaterThanOrEqual(ems);
  expect(textWidth(text, 1)).toBeLessThan(ems * 1.08);
  expect(textWidth(text, boldWidth)).toBeGreaterThanOrEqual(bold);
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
