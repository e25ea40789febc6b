import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { firstDayOfMonth, monthLengths } from '../../src/calendar/index.ts';
import { dailyCurve } from '../../src/climate/index.ts';

const twelve = (low: number, high: number) =>
  fc.array(fc.double({ min: low, max: high, noNaN: true }), { minLength: 12, maxLength: 12 });

function monthMeans(curve: Float64Array): number[] {
  return monthLengths.map((length, month) => {
    const first = firstDayOfMonth[month];
    return curve.subarray(first, first + length).reduce((sum, value) => sum + value, 0) / length;
  });
}

describe('daily curve', () => {
  it('keeps the monthly means', () => {
    fc.assert(
      fc.property(twelve(-60, 60), (months) => {
        const curve = dailyCurve(Float64Array.from(months), new Float64Array(365));
        monthMeans(curve).forEach((mean, month) => {
          expect(mean).toBeCloseTo(months[month], 8);
        });
      }),
      { seed: 20270101 },
    );
  });

  it('keeps the monthly means without a day below zero where asked', () => {
    const driestMixedWithWettest = fc.array(
      fc.oneof(fc.constant(0), fc.double({ min: 0, max: 900, noNaN: true })),
      {
        minLength: 12,
        maxLength: 12,
      },
    );
    fc.assert(
      fc.property(driestMixedWithWettest, (months) => {
        const curve = dailyCurve(Float64Array.from(months), new Float64Array(365), { nonNegative: true });
        expect(Math.min(...curve)).toBeGreaterThanOrEqual(0);
        monthMeans(curve).forEach((mean, month) => {
          expect(mean).toBeCloseTo(months[month], 7);
        });
      }),
      { seed: 20270101 },
    );
  });

  it('gives back a pure yearly wave from its monthly means', () => {
    const wave = Float64Array.from(
      { length: 365 },
      (_, day) => 10 + 12 * Math.sin((2 * Math.PI * (day - 110)) / 365),
    );
    const curve = dailyCurve(Float64Array.from(monthMeans(wave)), new Float64Array(365));
    const miss = Math.max(...curve.map((value, day) => Math.abs(value - wave[day])));
    expect(miss).toBeLessThan(0.05);
  });

  it('has no step at month ends or New Year', () => {
    const lyonLike = Float64Array.from([3, 5, 9, 12, 16, 20, 23, 22, 18, 13, 7, 4]);
    const curve = dailyCurve(lyonLike, new Float64Array(365));
    for (let day = 0; day < 365; day++)
      expect(Math.abs(curve[(day + 1) % 365] - curve[day])).toBeLessThan(0.25);
  });

  it('refuses arrays of another length, naming it', () => {
    expect(() => dailyCurve(new Float64Array(11), new Float64Array(365))).toThrow('got 11 and 365');
  });
});
