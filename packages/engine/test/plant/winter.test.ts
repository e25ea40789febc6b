import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  coverShelterC,
  hardening,
  heavedShare,
  killingTempC,
  nextSnowMm,
  nightKillShare,
  noHarmAboveC,
  snowShelterC,
} from '../../src/plant/index.ts';

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

  it('lies lower with every leaf up to three, and by 2.5 °C more when hardened from three on', () => {
    expect(killingTempC(1, 0)).toBe(-5);
    expect(killingTempC(3, 0)).toBe(-8.5);
    expect(killingTempC(9, 0)).toBe(-8.5);
    // the loop does not harden, two leaves harden by half
    expect(killingTempC(1, 1)).toBe(-5);
    expect(killingTempC(2, 1)).toBe(-7.25);
    expect(killingTempC(4, 0.5)).toBe(-9.75);
  });

  it('takes none at that temperature and all 4 °C below it', () => {
    expect(nightKillShare(-8.5, -8.5)).toBeCloseTo(0, 12);
    expect(nightKillShare(-9.5, -8.5)).toBeCloseTo(0.25, 12);
    expect(nightKillShare(-12.5, -8.5)).toBe(1);
    expect(nightKillShare(-20, -8.5)).toBe(1);
    expect(nightKillShare(3, -8.5)).toBe(0);
  });

  it('is never milder than the one above which nothing is looked at', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 20, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (leaves, hard) => {
          expect(killingTempC(leaves, hard)).toBeLessThanOrEqual(noHarmAboveC);
        },
      ),
      { seed },
    );
  });
});

it('plants harden in the cool: none at 14 °C, in full at 5 °C (HortScience 28:1092 for the direction)', () => {
  expect(hardening(20)).toBe(0);
  expect(hardening(14)).toBeCloseTo(0, 12);
  expect(hardening(9.5)).toBe(0.5);
  expect(hardening(5)).toBe(1);
  expect(hardening(-3)).toBe(1);
});

describe('snow (memory)', () => {
  it('shelters by 10 °C under 80 mm of water, by half of it under 45, and not while it is thin', () => {
    expect([
      snowShelterC(0),
      snowShelterC(10),
      snowShelterC(45),
      snowShelterC(80),
      snowShelterC(300),
    ]).toEqual([0, 0, 5, 10, 10]);
  });

  it('gathers below 0 °C and melts by 3 mm a degree, to nothing', () => {
    expect(nextSnowMm(20, 5, -0.1)).toBe(25);
    expect(nextSnowMm(20, 5, 0)).toBe(20);
    expect(nextSnowMm(20, 5, 2)).toBe(14);
    expect(nextSnowMm(20, 5, 7)).toBe(0);
  });
});

it('covers shelter, fleece by at most the 3 °C of trials and a tunnel more (Sideman et al. 2014)', () => {
  expect(coverShelterC.none).toBe(0);
  expect(coverShelterC.fleece).toBe(3);
  expect(coverShelterC.tunnel).toBe(10);
});

describe('frost heave grows', () => {
  it('with wet ground from a quarter of wet days to 45 in 100, and with small plants', () => {
    expect(heavedShare(-5, 2, 0.35, 0.06, 0.1)).toBeCloseTo(0.05, 12);
    expect(heavedShare(-5, 2, 0.5, 0.105, 0.1)).toBeCloseTo(0.05, 12);
    expect(heavedShare(-5, 2, 0.5, 0.15, 0.1)).toBeCloseTo(0, 12);
    expect(heavedShare(-1, 0, 0.5, 0.06, 0.1)).toBeCloseTo(0.1, 12);
    expect(heavedShare(-0.9, 2, 0.5, 0.06, 0.1)).toBe(0);
    expect(heavedShare(-5, -0.1, 0.5, 0.06, 0.1)).toBe(0);
  });
});
