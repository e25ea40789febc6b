import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type MonthlyClimate, warmed } from '../../src/climate/index.ts';

/** A climate with frost in winter only, invented. */
const climate: MonthlyClimate = {
  latitudeDeg: 48,
  longitudeDeg: 3,
  elevationM: 150,
  tempMeanC: Float64Array.from([1, 2, 6, 10, 14, 18, 20, 19, 15, 10, 5, 2]),
  tempRangeC: new Float64Array(12).fill(8),
  rainMm: new Float64Array(12).fill(50),
  wetDays: new Float64Array(12).fill(12),
  relativeHumidityPct: new Float64Array(12).fill(75),
  sunshinePct: new Float64Array(12).fill(45),
  wind10mMs: new Float64Array(12).fill(3),
  frostNights: Float64Array.from([20, 16, 8, 2, 0, 0, 0, 0, 0, 1, 8, 31]),
  minTempSdC: new Float64Array(12).fill(3.5),
};

describe('warmed climate', () => {
  it('moves every month by the offset and leaves the given climate alone', () => {
    const before = climate.tempMeanC.slice();
    const warmer = warmed(climate, 0.6);
    warmer.tempMeanC.forEach((value, month) => {
      expect(value).toBeCloseTo(before[month] + 0.6, 12);
    });
    expect(climate.tempMeanC).toEqual(before);
    expect(warmer.rainMm).toBe(climate.rainMm);
  });

  it('is the same climate without an offset', () => {
    expect(warmed(climate, 0)).toBe(climate);
  });

  it('takes frost nights along the normal law', () => {
    // half the nights below 0 °C and a shift of one standard deviation: the normal table has 15.87 % beyond 1
    const half = { ...climate, frostNights: new Float64Array(12).fill(15.5) };
    expect(warmed(half, 3.5).frostNights[0]).toBeCloseTo(31 * 0.1587, 2);
    expect(warmed(half, -3.5).frostNights[0]).toBeCloseTo(31 * 0.8413, 2);
  });

  it('never has more frost when warmer, nor less when colder, nor more than nights', () => {
    fc.assert(
      fc.property(fc.double({ min: -10, max: 10, noNaN: true }), (offset) => {
        warmed(climate, offset).frostNights.forEach((nights, month) => {
          expect(nights).toBeGreaterThanOrEqual(0);
          expect(nights).toBeLessThanOrEqual(31);
          if (offset > 0) expect(nights).toBeLessThanOrEqual(climate.frostNights[month]);
          if (offset < 0) expect(nights).toBeGreaterThanOrEqual(climate.frostNights[month]);
        });
      }),
      { seed: 20270101 },
    );
  });

  it.each([Number.NaN, 11, -10.5])('refuses an offset of %s', (offset) => {
    expect(() => warmed(climate, offset)).toThrow(`warming ${offset}: expected −10 to 10 °C`);
  });
});
