import fc from 'fast-check';
import { expect, test } from 'vitest';
import { dayAxis } from '../../src/drawing/day-axis.ts';
import { type as font } from '../../src/drawing/picture.tsx';
import { textWidth } from '../../src/drawing/text-fit.ts';
import { placeMarks } from '../../src/year-line/place-marks.ts';
import type { CropMark } from '../../src/year-line/year-line-props.ts';
import { anyWidth, newYear2027, seeded } from '../scenes.ts';

const anyMark = fc
  .record({ day: fc.nat({ max: 364 }), length: fc.integer({ min: 4, max: 36 }), spread: fc.nat({ max: 25 }) })
  .map(({ day, length, spread }): CropMark => {
    const at = newYear2027 + day;
    return {
      kind: 'tops',
      day: at,
      text: 'nnnnn '.repeat(length).slice(0, length).trim(),
      span: { from: at - spread, to: at + spread },
    };
  });

test('words stay on the picture and off their own dot, one mark below the other in order of days', () => {
  fc.assert(
    fc.property(anyWidth, fc.array(anyMark, { minLength: 1, maxLength: 6 }), (width, marks) => {
      const axis = dayAxis(newYear2027, 365, width);
      const { placed, height } = placeMarks(marks, axis);
      let above = -1;
      let dayAbove = 0;
      for (const { mark, x, dotY, anchor, textX, lines, textY, small } of placed) {
        expect(lines.join(' ')).toBe(mark.text);
        const wide = Math.max(...lines.map((line) => textWidth(line, small ? font.small : font.text)));
        const left = anchor === 'start' ? textX : anchor === 'end' ? textX - wide : textX - wide / 2;
        expect(left).toBeGreaterThanOrEqual(axis.left - 0.01);
        expect(left + wide).toBeLessThanOrEqual(axis.right + 0.01);
        expect(left > x || left + wide < x || textY - dotY > 12).toBe(true);
        expect(dotY).toBeGreaterThan(above);
        expect(mark.day).toBeGreaterThanOrEqual(dayAbove);
        above = dotY;
        dayAbove = mark.day;
      }
      expect(height).toBeGreaterThan(above);
    }),
    seeded,
  );
});
