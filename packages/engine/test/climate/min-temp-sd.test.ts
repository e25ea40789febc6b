import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { minTempSd } from '../../src/climate/index.ts';
import { climateOf, coldInland, wetTropics } from '../weather/climates.ts';

describe('the spread of the daily minimum from monthly means', () => {
  it('is within 1.5–7 °C for any climate', () => {
    const months = (min: number, max: number) =>
      fc.array(fc.double({ min, max, noNaN: true }), { minLength: 12, maxLength: 12 });
    fc.assert(
      fc.property(months(-50, 40), months(0, 25), (mean, range) => {
        for (const spread of minTempSd(climateOf({ latitudeDeg: 40, mean, range }))) {
          expect(spread).toBeGreaterThanOrEqual(1.5);
          expect(spread).toBeLessThanOrEqual(7);
        }
      }),
      { seed: 20260303, numRuns: 200 },
    );
  });

  it('is larger inland than in the wet tropics, and inland in winter than in summer', () => {
    const inland = minTempSd(coldInland);
    const tropics = minTempSd(wetTropics);
    expect(Math.min(...inland)).toBeGreaterThan(Math.max(...tropics));
    expect(inland[0]!).toBeGreaterThan(1.5 * inland[6]!);
  });

  it('is the same with the seasons turned round', () => {
    const mean = [2, 3, 6, 10, 14, 18, 20, 19, 15, 10, 6, 3];
    const turn = (values: number[]) => [...values.slice(6), ...values.slice(0, 6)];
    const north = [...minTempSd(climateOf({ latitudeDeg: 45, mean }))];
    const south = [...minTempSd(climateOf({ latitudeDeg: -45, mean: turn(mean) }))];
    turn(south).forEach((spread, month) => {
      expect(spread).toBeCloseTo(north[month]!, 12);
    });
  });
});
