import fc from 'fast-check';
import { expect, test } from 'vitest';
import { dayAtX, dayAxis, monthSpans, xOfDay } from '../../src/drawing/day-axis.ts';
import { anyDay, anyWidth, newYear2027, seeded } from '../scenes.ts';

const anyAxis = fc
  .record({ firstDay: anyDay, days: fc.integer({ min: 365, max: 700 }), width: anyWidth })
  .map(({ firstDay, days, width }) => dayAxis(firstDay, days, width));

test('a pointer over a day finds that day', () => {
  fc.assert(
    fc.property(anyAxis, fc.nat({ max: 364 }), (axis, i) => {
      expect(dayAtX(axis, xOfDay(axis, axis.firstDay + i + 0.5))).toBe(axis.firstDay + i);
    }),
    seeded,
  );
});

test('a pointer beyond the ends finds the first and the last day', () => {
  const axis = dayAxis(newYear2027, 365, 400);
  expect([dayAtX(axis, -50), dayAtX(axis, 999)]).toEqual([newYear2027, newYear2027 + 364]);
});

test('months lie side by side from one end to the other, also across New Year', () => {
  fc.assert(
    fc.property(anyAxis, (axis) => {
      const spans = monthSpans(axis);
      expect(spans[0].from).toBeCloseTo(axis.left);
      expect(spans.at(-1)?.to).toBeCloseTo(axis.right);
      for (let i = 1; i < spans.length; i++) {
        expect(spans[i].from).toBeCloseTo(spans[i - 1].to);
        expect(spans[i].month).toBe((spans[i - 1].month % 12) + 1);
      }
    }),
    seeded,
  );
});
