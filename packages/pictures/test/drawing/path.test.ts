import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { areaPath, linePath, type Point, px, smoothLine } from '../../src/drawing/path.ts';
import { seeded } from '../scenes.ts';

const risingPoints = fc
  .array(fc.tuple(fc.integer({ min: 1, max: 40 }), fc.integer({ min: -300, max: 300 })), {
    minLength: 3,
    maxLength: 40,
  })
  .map((steps) => {
    let x = 0;
    return steps.map(([step, y]): Point => {
      x += step;
      return [x, y];
    });
  });

const numbersOf = (path: string) => [...path.matchAll(/-?\d+(?:\.\d+)?/g)].map(Number);

describe('px', () => {
  test('writes tenths, and no minus before nothing', () => {
    expect([px(1.2499), px(-0.01), px(7)]).toEqual(['1.2', '0', '7']);
  });
  test.each([Number.NaN, Number.POSITIVE_INFINITY])('refuses %s by name', (value) => {
    expect(() => px(value)).toThrow(String(value));
  });
});

describe('a smooth line', () => {
  test('passes through its points and never swings beyond two neighbours', () => {
    fc.assert(
      fc.property(risingPoints, (points) => {
        const segments = smoothLine(points).split('C').slice(1).map(numbersOf);
        expect(segments).toHaveLength(points.length - 1);
        segments.forEach(([, y1, , y2, x, y], i) => {
          const low = Math.min(points[i][1], points[i + 1][1]) - 0.1;
          const high = Math.max(points[i][1], points[i + 1][1]) + 0.1;
          for (const control of [y1, y2]) {
            expect(control).toBeGreaterThanOrEqual(low);
            expect(control).toBeLessThanOrEqual(high);
          }
          expect([x, y]).toEqual([...points[i + 1]]);
        });
      }),
      seeded,
    );
  });
});

test('nothing to draw is an empty path', () => {
  expect([linePath([]), areaPath([], 5)]).toEqual(['', '']);
});
