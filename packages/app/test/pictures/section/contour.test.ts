import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  bulbHeightMm,
  heartShare,
  necks,
  ringShares,
  scaleContour,
} from '../../../src/pictures/section/contour.ts';
import { seeded } from '../scenes.ts';

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
        expect(-Math.min(...ys)).toBeCloseTo(bulbHeightMm(2 * r, necks.closed), 0);
      }),
      seeded,
    );
  });
});
