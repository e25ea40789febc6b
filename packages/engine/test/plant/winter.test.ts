import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { heavedShare, killingTempC } from '../../src/plant/index.ts';

const seed = 20261125;

describe('frost heave (direction: common practice, no source)', () => {
  it('spares plants that are rooted, nights above frost, and ground that never thaws or is dry', () => {
    expect(heavedShare(-5, 2, 0.6, 0.2, 0.08)).toBe(0);
    expect(heavedShare(0, 2, 0.6, 0.02, 0.08)).toBe(0);
    expect(heavedShare(-9, -4, 0.6, 0.02, 0.08)).toBe(0);
    expect(heavedShare(-5, 2, 0.1, 0.02, 0.08)).toBe(0);
  });

  it('takes small plants in wet ground, never more than the loss of a night', () => {
    expect(heavedShare(-5, 2, 0.6, 0.02, 0.08)).toBeCloseTo(0.08, 12);
    fc.assert(
      fc.property(
        fc.double({ min: -30, max: 10, noNaN: true }),
        fc.double({ min: -20, max: 20, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0.002, max: 3, noNaN: true }),
        (night, mean, wetness, shootG) => {
          const share = heavedShare(night, mean, wetness, shootG, 0.08);
          expect(share).toBeGreaterThanOrEqual(0);
          expect(share).toBeLessThanOrEqual(0.08);
          // a larger plant never fares worse
          expect(heavedShare(night, mean, wetness, shootG * 1.5, 0.08)).toBeLessThanOrEqual(share);
        },
      ),
      { seed },
    );
  });
});

describe('the night that kills', () => {
  // Brewster 2008 p. 289: to about −11 °C at the hardy end; the other ends memory.
  it('lies at −4 °C for the loop stage, −6 at two leaves, −11 hardened with four', () => {
    expect(killingTempC(0, 0)).toBe(-4);
    expect(killingTempC(2, 0)).toBe(-6);
    expect(killingTempC(4, 1)).toBe(-11);
  });
});
