import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { frostHollowC, inFrostHollow, type MonthlyClimate } from '../../src/climate/index.ts';

/** A temperate climate, invented, with its mean temperatures moved by `shiftC`. */
function climate(shiftC: number): MonthlyClimate {
  return {
    latitudeDeg: 48,
    longitudeDeg: 3,
    elevationM: 150,
    tempMeanC: Float64Array.from([1, 2, 6, 10, 14, 18, 20, 19, 15, 10, 5, 2].map((t) => t + shiftC)),
    tempRangeC: new Float64Array(12).fill(8),
    rainMm: new Float64Array(12).fill(50),
    wetDays: new Float64Array(12).fill(12),
    relativeHumidityPct: new Float64Array(12).fill(75),
    sunshinePct: new Float64Array(12).fill(45),
    wind10mMs: new Float64Array(12).fill(3),
    frostNights: Float64Array.from([20, 16, 8, 2, 0, 0, 0, 0, 0, 1, 8, 18]),
    minTempSdC: new Float64Array(12).fill(3.5),
  };
}

describe('a frost hollow', () => {
  it('cools the nights and leaves the days, in every month', () => {
    fc.assert(
      fc.property(fc.double({ min: -20, max: 20, noNaN: true }), (shiftC) => {
        const open = climate(shiftC);
        const hollow = inFrostHollow(open);
        for (let month = 0; month < 12; month++) {
          const half = (c: MonthlyClimate) => c.tempRangeC[month] / 2;
          const low = (c: MonthlyClimate) => c.tempMeanC[month] - half(c);
          const high = (c: MonthlyClimate) => c.tempMeanC[month] + half(c);
          expect(low(hollow)).toBeCloseTo(low(open) - frostHollowC, 9);
          expect(high(hollow)).toBeCloseTo(high(open), 9);
        }
      }),
      { seed: 20261125 },
    );
  });

  it('brings more frost nights, never more than the month has, and leaves the open ground as it was', () => {
    const open = climate(0);
    const before = open.frostNights.slice();
    const { frostNights } = inFrostHollow(open);
    frostNights.forEach((nights, month) => {
      expect(nights).toBeGreaterThanOrEqual(before[month]);
      expect(nights).toBeLessThanOrEqual(31);
    });
    expect(frostNights[0]).toBeGreaterThan(before[0] + 2);
    expect(open.frostNights).toEqual(before);
  });
});
