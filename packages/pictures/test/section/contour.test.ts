import { shapes } from '@neckfall/data';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  bulbHeightMm,
  drawnAcrossMm,
  heartShare,
  heightIn,
  necks,
  ringShares,
  scaleContour,
} from '../../src/section/contour.ts';
import type { OnionShape } from '../../src/section/onion.ts';
import { seeded } from '../scenes.ts';

type Point = { x: number; y: number };

/** Turned about the axis: discs between the points of its right side, curves in steps, from the root to a height. */
function outlineVolume(path: string, top: number): number {
  const [x0, y0, ...rest] = [...path.matchAll(/-?\d+(?:\.\d+)?/g)].map(Number);
  let from: Point = { x: x0, y: y0 };
  let sum = 0;
  for (let i = 0; i + 5 < 12; i += 6) {
    const [ax, ay, bx, by, cx, cy] = rest.slice(i, i + 6);
    let last = from;
    for (let step = 1; step <= 50; step++) {
      const t = step / 50;
      const at = (p: number, a: number, b: number, c: number) =>
        (1 - t) ** 3 * p + 3 * t * (1 - t) ** 2 * a + 3 * t * t * (1 - t) * b + t ** 3 * c;
      const next = { x: at(from.x, ax, bx, cx), y: at(from.y, ay, by, cy) };
      if (next.y >= top - 0.1) sum += Math.PI * ((last.x + next.x) / 2) ** 2 * (last.y - next.y);
      last = next;
    }
    from = { x: cx, y: cy };
  }
  return sum;
}

const leaves = fc.array(fc.double({ min: 0.05, max: 1, noNaN: true }), { minLength: 1, maxLength: 14 });
const radius = fc.integer({ min: 10, max: 60 });

describe('rings', () => {
  test('are as thick as their leaves are large, and fill the bulb from skin to heart', () => {
    fc.assert(
      fc.property(leaves, fc.integer({ min: 1, max: 3 }), radius, (sizes, skins, radiusMm) => {
        const shares = ringShares(sizes, skins, radiusMm);
        expect(shares.rings).toHaveLength(sizes.length + 1);
        expect(shares.skins[0]).toBe(1);
        expect(shares.rings.at(-1)).toBe(heartShare);
        const thick = sizes.map((_, i) => shares.rings[i] - shares.rings[i + 1]);
        thick.forEach((ring, i) => {
          expect(ring / thick[0]).toBeCloseTo(sizes[i] / sizes[0], 6);
        });
      }),
      seeded,
    );
  });
});

describe('a shape', () => {
  /** Volume of the body turned about its axis, in mm³, from the outline as it is drawn; lines stand for its curves. */
  const volume = (shape: OnionShape) => {
    const across = drawnAcrossMm({ acrossMm: 80, shape });
    const outline = scaleContour(0, 0, across / 2, 1, necks.closed, shape);
    return outlineVolume(outline, -heightIn(shape, 1.86) * (across / 2));
  };

  test.each(shapes)('%s keeps the volume of a globe of its mass, to a tenth', (shape) => {
    expect(volume(shape) / volume('globe')).toBeGreaterThan(0.9);
    expect(volume(shape) / volume('globe')).toBeLessThan(1.1);
  });

  test('a torpedo is about twice as tall as it is wide, a flat onion wider than tall', () => {
    const ratio = (shape: OnionShape) => heightIn(shape, 1.86) / 2;
    expect(ratio('long')).toBeGreaterThan(1.7);
    expect(ratio('flat')).toBeLessThan(0.65);
  });
});

describe('a contour', () => {
  test('is as wide as its share of the bulb, and stands on the baseline', () => {
    fc.assert(
      fc.property(radius, fc.double({ min: 0.15, max: 1, noNaN: true }), (r, share) => {
        const numbers = [...scaleContour(0, 0, r, share, necks.closed).matchAll(/-?\d+(?:\.\d+)?/g)].map(
          Number,
        );
        const xs = numbers.filter((_, i) => i % 2 === 0);
        const ys = numbers.filter((_, i) => i % 2 === 1);
        expect(Math.max(...xs)).toBeCloseTo(share * r, 0);
        expect(Math.min(...xs)).toBeCloseTo(-share * r, 0);
        expect(Math.max(...ys)).toBeLessThanOrEqual(0);
        expect(-Math.min(...ys)).toBeCloseTo(
          bulbHeightMm({ acrossMm: 2 * r, shape: 'globe' }, necks.closed),
          0,
        );
      }),
      seeded,
    );
  });
});
