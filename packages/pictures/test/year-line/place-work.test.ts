import fc from 'fast-check';
import { expect, test } from 'vitest';
import { dayAxis } from '../../src/drawing/day-axis.ts';
import { placeWork } from '../../src/year-line/place-work.ts';
import { anyWidth, newYear2027, seeded } from '../scenes.ts';

const anyWork = fc
  .array(fc.integer({ min: -30, max: 400 }), { maxLength: 40 })
  .map((days) =>
    days
      .toSorted((a, b) => a - b)
      .map((day, at) => ({ number: at + 1, day: newYear2027 + day, text: `work ${at + 1}` })),
  );

test('numbers stand on the picture and off each other, and no work of the year is left out', () => {
  fc.assert(
    fc.property(anyWidth, anyWork, (width, work) => {
      const axis = dayAxis(newYear2027, 365, width);
      const placed = placeWork(work, axis);
      const inYear = work.filter(({ day }) => day >= newYear2027 && day < newYear2027 + 365);
      const told = placed.flatMap(({ text }) => {
        const [first, last = first] = text.split('–').map(Number);
        return Array.from({ length: last - first + 1 }, (_, at) => first + at);
      });
      expect(told).toEqual(inYear.map(({ number }) => number));
      expect(placed.flatMap(({ pegs }) => pegs)).toHaveLength(inYear.length);
      let end = axis.left;
      for (const { x, half } of placed) {
        expect(x - half).toBeGreaterThanOrEqual(end - 0.01);
        end = x + half;
      }
      expect(end).toBeLessThanOrEqual(axis.right + 0.01);
    }),
    seeded,
  );
});

test('near work is told together, work apart by itself', () => {
  const at = (number: number, day: number) => ({ number, day: newYear2027 + day, text: '' });
  const texts = (width: number) =>
    placeWork([at(1, 100), at(2, 100), at(3, 120), at(4, 200)], dayAxis(newYear2027, 365, width)).map(
      ({ text }) => text,
    );
  expect(texts(1000)).toEqual(['1–2', '3', '4']);
  expect(texts(300)).toEqual(['1–3', '4']);
});
