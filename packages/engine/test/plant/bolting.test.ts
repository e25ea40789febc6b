import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boltedShare, boltingSizeFactor, coldResponse } from '../../src/plant/index.ts';

const seed = 20261125;

describe('cold that turns a plant to flower', () => {
  // Initiation is suppressed above about 17 °C and begins below about 15 (Holdsworth & Heath IV); best 9 °C (memory).
  it('counts a day at 9 °C in full and none at freezing or at the ceiling', () => {
    expect(coldResponse(9, 17)).toBe(1);
    expect(coldResponse(0, 17)).toBeCloseTo(0, 12);
    expect(coldResponse(17, 17)).toBeCloseTo(0, 12);
    expect(coldResponse(25, 17)).toBeCloseTo(0, 12);
  });

  it('counts for nothing up to the bolting size and more the larger the plant, up to e^span', () => {
    expect(boltingSizeFactor(0.3, 0.3, 2)).toBe(0);
    expect(boltingSizeFactor(0.3 * Math.exp(1), 0.3, 2)).toBeCloseTo(0.5, 12);
    expect(boltingSizeFactor(0.3 * Math.exp(2.5), 0.3, 2)).toBe(1);
    fc.assert(
      fc.property(
        fc.double({ min: 0.001, max: 20, noNaN: true }),
        fc.double({ min: 0.06, max: 0.9, noNaN: true }),
        fc.double({ min: 1, max: 4, noNaN: true }),
        (shootG, sizeG, span) => {
          const factor = boltingSizeFactor(shootG, sizeG, span);
          expect(factor).toBeGreaterThanOrEqual(0);
          expect(factor).toBeLessThanOrEqual(1);
          expect(boltingSizeFactor(shootG * 1.2, sizeG, span)).toBeGreaterThanOrEqual(factor);
        },
      ),
      { seed },
    );
  });

  it('bolts half the plants at the half-point', () => {
    expect(boltedShare(60, 60, 9)).toBe(0.5);
    expect(boltedShare(80, 60, 9)).toBeGreaterThan(0.85);
  });
});
