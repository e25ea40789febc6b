import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  keepingCurve,
  keptDays,
  lastsDay,
  type MonthlyClimate,
  noStoreDraw,
  type StoredLot,
  storeClimateOf,
} from '../../src/index.ts';

const globe: StoredLot = { keepsMonths: [5, 7], thickNeckShare: 0, bruisedShare: 0 };
const anyClimate = {} as MonthlyClimate;
const airOf = (tempC: number, humidityPct: number) => storeClimateOf(anyClimate, { tempC, humidityPct });

const air = fc.record({
  tempC: fc.double({ min: -20, max: 45, noNaN: true }),
  humidityPct: fc.double({ min: 0, max: 100, noNaN: true }),
});
const share = fc.double({ min: 0, max: 1, noNaN: true });
const lots = fc.record({
  keepsMonths: fc.tuple(
    fc.double({ min: 0.5, max: 6, noNaN: true }),
    fc.double({ min: 6, max: 12, noNaN: true }),
  ),
  thickNeckShare: share,
  bruisedShare: share,
});
const factor = fc.double({ min: 0.1, max: 8, noNaN: true });
const draws = fc.record({ sprouting: factor, rotting: factor, drying: factor });
const seeded = { seed: 20, numRuns: 150 };

describe('a lot in any store', () => {
  test('is sound, sprouted or rotten to the last bulb, and the sound ones never become more', () => {
    fc.assert(
      fc.property(
        lots,
        air,
        fc.integer({ min: 0, max: 364 }),
        draws,
        (lot, { tempC, humidityPct }, day, draw) => {
          const { sound, sprouted, rotten, massShare } = keepingCurve(
            lot,
            airOf(tempC, humidityPct),
            day,
            draw,
          );
          for (let at = 0; at < keptDays; at++) {
            expect(Math.abs(sound[at] + sprouted[at] + rotten[at] - 1)).toBeLessThan(1e-9);
            for (const of of [sound, sprouted, rotten, massShare]) {
              if (!(of[at] >= 0 && of[at] <= 1 + 1e-12))
                throw new Error(`day ${at}: ${of[at]}, expected 0 to 1`);
            }
            if (at > 0 && sound[at] > sound[at - 1]) throw new Error(`day ${at}: sound again`);
          }
        },
      ),
      { seed: 20, numRuns: 60 },
    );
  });

  test('has no more sound bulbs where rot is quicker, and is no heavier where it dries quicker', () => {
    fc.assert(
      fc.property(lots, air, draws, factor, (lot, { tempC, humidityPct }, draw, times) => {
        const store = airOf(tempC, humidityPct);
        const more = 1 + times;
        const usual = keepingCurve(lot, store, 200, draw);
        const rots = keepingCurve(lot, store, 200, { ...draw, rotting: draw.rotting * more });
        const dries = keepingCurve(lot, store, 200, { ...draw, drying: draw.drying * more });
        expect(rots.sound.every((of, day) => of <= usual.sound[day] + 1e-12)).toBe(true);
        expect(dries.massShare.every((of, day) => of <= usual.massShare[day] + 1e-12)).toBe(true);
      }),
      seeded,
    );
  });

  test('lasts at 2 °C at least as long as at 15 °C', () => {
    fc.assert(
      fc.property(lots, draws, fc.double({ min: 30, max: 100, noNaN: true }), (lot, draw, humidityPct) => {
        const lasts = (tempC: number) => lastsDay(keepingCurve(lot, airOf(tempC, humidityPct), 250, draw));
        expect(lasts(2)).toBeGreaterThanOrEqual(lasts(15));
      }),
      seeded,
    );
  });
});

describe('an ordinary globe', () => {
  const curveAt = (tempC: number, humidityPct = 68, lot = globe) =>
    keepingCurve(lot, airOf(tempC, humidityPct), 240, noStoreDraw);

  test('sprouts soonest between 10 and 20 °C', () => {
    const sproutedAt = (tempC: number) => curveAt(tempC).sprouted[150];
    for (const tempC of [0, 28, 33]) expect(sproutedAt(14)).toBeGreaterThan(sproutedAt(tempC) + 0.5);
  });

  test('rots more when damp, bruised or thick in the neck', () => {
    const usual = curveAt(4).rotten[120];
    expect(curveAt(4, 90).rotten[120]).toBeGreaterThan(2 * usual);
    expect(curveAt(4, 68, { ...globe, bruisedShare: 0.5 }).rotten[120]).toBeGreaterThan(1.5 * usual);
    expect(curveAt(4, 68, { ...globe, thickNeckShare: 0.5 }).rotten[120]).toBeGreaterThan(1.5 * usual);
  });

  test('is ruined by hard frost and not at all by half a degree below zero', () => {
    expect(lastsDay(curveAt(-6))).toBeLessThan(10);
    expect(lastsDay(curveAt(-0.5))).toBeGreaterThan(120);
  });

  test('is over on the first day on which fewer than half are sound', () => {
    const curve = curveAt(8);
    const day = lastsDay(curve);
    expect(curve.sound[day]).toBeLessThan(0.5);
    expect(curve.sound[day - 1]).toBeGreaterThanOrEqual(0.5);
  });
});
