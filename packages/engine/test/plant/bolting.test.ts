import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boltedShare, boltingSizeFactor, coldResponse, setColdDays } from '../../src/plant/index.ts';

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

  it('counts by straight lines on either side of 9 °C', () => {
    expect(coldResponse(4.5, 17)).toBeCloseTo(0.5, 12);
    expect(coldResponse(13, 17)).toBeCloseTo(0.5, 12);
    expect(coldResponse(-5, 17)).toBe(0);
  });

  it('bolts as the logistic of the cold beyond the half-point', () => {
    expect(boltedShare(69, 60, 9)).toBeCloseTo(Math.E / (1 + Math.E), 12);
    expect(boltedShare(51, 60, 9)).toBeCloseTo(1 / (1 + Math.E), 12);
  });
});

describe('sets', () => {
  const flower = (mm: number, store: 'cold' | 'warm') => boltedShare(setColdDays(mm, store, 60, 9), 60, 9);

  it('from a cold store flower as logistic(0.5 · (d − 21.5 mm)) (slope: Sapporo 1949–50)', () => {
    expect(flower(21.5, 'cold')).toBeCloseTo(0.5, 12);
    expect(flower(23.5, 'cold')).toBeCloseTo(Math.E / (1 + Math.E), 12);
    expect(flower(19.5, 'cold')).toBeCloseTo(1 / (1 + Math.E), 12);
    // about one in ten at 16 mm (common practice, no source)
    expect(flower(16, 'cold')).toBeLessThan(0.1);
  });

  it('from a warm store hardly flower (Heath 1943)', () => {
    expect(flower(21.5, 'warm')).toBeLessThan(0.01);
    expect(flower(35.5, 'warm')).toBeCloseTo(0.5, 12);
  });

  it('bring no less than no cold', () => {
    expect(setColdDays(5, 'warm', 20, 5)).toBe(0);
  });
});
