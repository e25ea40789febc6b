import { describe, expect, test } from 'vitest';
import {
  keepingCurve,
  type LookedAt,
  type MonthlyClimate,
  noStoreDraw,
  type StoreDraw,
  storeClimateOf,
  storeDrawsOf,
  taughtStoreDraws,
} from '../../src/index.ts';

const store = storeClimateOf({} as MonthlyClimate, { tempC: 8, humidityPct: 70 });
const lot = { keepsMonths: [5, 7], thickNeckShare: 0.05, bruisedShare: 0 } as const;
const liftedOn = 231;
const count = 90;
const usual = storeDrawsOf(count, 5);

/** Three looks at 200 bulbs of a lot that fares by a draw; what is bad is taken out each time. */
function looksAt(draw: Partial<StoreDraw>, days = [50, 90, 130]): LookedAt {
  const curve = keepingCurve(lot, store, liftedOn, { ...noStoreDraw, ...draw });
  const found = (of: Float64Array, day: number, since: number) => Math.round(200 * (of[day] - of[since]));
  const checks = days.map((day, at) => {
    const since = at === 0 ? 0 : days[at - 1];
    return {
      day,
      sound: Math.round(200 * curve.sound[day]),
      isSoundCounted: true,
      sprouted: found(curve.sprouted, day, since),
      rotten: found(curve.rotten, day, since),
      massShare: null,
    };
  });
  return { lot, store, liftedOn, checks };
}

const logMean = (draws: readonly StoreDraw[], of: keyof StoreDraw) =>
  draws.reduce((sum, draw) => sum + Math.log(draw[of]), 0) / draws.length;
const logSd = (draws: readonly StoreDraw[], of: keyof StoreDraw) => {
  const mean = logMean(draws, of);
  return Math.sqrt(draws.reduce((sum, draw) => sum + (Math.log(draw[of]) - mean) ** 2, 0) / draws.length);
};

describe('what looks teach of lots to come in the same store', () => {
  test('is nothing where nobody has looked', () => {
    expect(taughtStoreDraws([], count, 5)).toEqual(usual);
    expect(taughtStoreDraws([{ ...looksAt({}), checks: [] }], count, 5)).toEqual(usual);
  });

  // each about two standard deviations from the usual
  test.each([
    ['sprouting', 1.6],
    ['rotting', 4],
  ] as const)('moves %s toward what was found, part of the way', (of, factor) => {
    const fast = taughtStoreDraws([looksAt({ [of]: factor })], count, 5);
    const slow = taughtStoreDraws([looksAt({ [of]: 1 / factor })], count, 5);
    expect(logMean(fast, of)).toBeGreaterThan(logMean(usual, of));
    expect(logMean(fast, of)).toBeLessThan(Math.log(factor));
    expect(logMean(slow, of)).toBeLessThan(logMean(usual, of));
    expect(logMean(slow, of)).toBeGreaterThan(-Math.log(factor));
  });

  test('goes further with more lots, and leaves lots to differ', () => {
    const one = looksAt({ sprouting: 1.5 });
    const single = taughtStoreDraws([one], count, 5);
    const several = taughtStoreDraws([one, one, one], count, 5);
    expect(logMean(several, 'sprouting')).toBeGreaterThan(logMean(single, 'sprouting'));
    expect(logSd(single, 'sprouting')).toBeLessThan(logSd(usual, 'sprouting'));
    // half of the variance is of each lot, which no look at another tells
    expect(logSd(several, 'sprouting')).toBeGreaterThan(0.6 * logSd(usual, 'sprouting'));
  });

  test('is the same from the same seed', () => {
    const looked = [looksAt({ rotting: 2 })];
    expect(taughtStoreDraws(looked, count, 5)).toEqual(taughtStoreDraws(looked, count, 5));
  });
});
