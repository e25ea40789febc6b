import fc from 'fast-check';
import { expect, test } from 'vitest';
import { mmPerStroke, rainStrokes } from '../../src/drawing/rain-strokes.ts';
import { seeded } from '../scenes.ts';

test('as many strokes fall as the rain has five millimetres, each between the sky and what it falls on', () => {
  const rain = fc.array(fc.double({ min: 0, max: 40, noNaN: true }), { minLength: 10, maxLength: 120 });
  fc.assert(
    fc.property(rain, (mm) => {
      const total = mm.reduce((a, b) => a + b, 0);
      const path = rainStrokes(
        mm,
        (i) => 3 * i,
        20,
        () => 90,
      );
      const strokes = path.split('M').slice(1);
      expect(Math.abs(strokes.length - total / mmPerStroke)).toBeLessThanOrEqual(0.51);
      for (const stroke of strokes) {
        const [, y1, , y2] = stroke.split(/[ L]/).map(Number);
        expect(y1).toBeGreaterThanOrEqual(20);
        expect(y2).toBeLessThanOrEqual(90);
      }
    }),
    seeded,
  );
});
