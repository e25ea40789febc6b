import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  dayNumber,
  keepingCurve,
  lastsDay,
  learnStore,
  type MonthlyClimate,
  type Observation,
  type StoreCheck,
  storeClimateOf,
  storedNow,
} from '../../src/index.ts';

const store = storeClimateOf({} as MonthlyClimate, { tempC: 8, humidityPct: 70 });
const lot = { keepsMonths: [5, 7], thickNeckShare: 0.05, bruisedShare: 0 } as const;
const seasons = 300;

/** Mean day on which the lot is over, and mean factor on rot, after a look. */
function after(...checks: StoreCheck[]): { over: number; rotting: number } {
  const draws = learnStore(lot, store, 231, checks, seasons, 5);
  const mean = (values: number[]) => values.reduce((sum, value) => sum + value, 0) / seasons;
  return {
    over: mean(draws.map((draw) => lastsDay(keepingCurve(lot, store, 231, draw)))),
    rotting: mean(draws.map(({ rotting }) => rotting)),
  };
}

const look = (
  sound: number | null,
  isSoundCounted: boolean,
  sprouted: number,
  rotten: number,
): StoreCheck => ({
  day: 90,
  sound,
  isSoundCounted,
  sprouted,
  rotten,
  massShare: null,
});
// one sound bulb tells next to nothing
const untaught = after(look(1, true, 0, 0));

describe('a look that counts the bad bulbs alone', () => {
  test('moves the forecast the way the whole count does, and never further', () => {
    let moved = 0;
    const shares = fc.double({ min: 0, max: 0.45, noNaN: true });
    fc.assert(
      fc.property(fc.integer({ min: 20, max: 400 }), shares, shares, (bulbs, sprouting, rotting) => {
        const [sprouted, rotten] = [sprouting, rotting].map((share) => Math.round(bulbs * share));
        const sound = bulbs - sprouted - rotten;
        const whole = after(look(sound, true, sprouted, rotten)).over - untaught.over;
        const part = after(look(sound, false, sprouted, rotten)).over - untaught.over;
        // where neither says anything new, a mean of three hundred draws strays by a day or two
        expect(Math.abs(part)).toBeLessThanOrEqual(Math.abs(whole) + 3);
        if (Math.abs(whole) > 5) expect(Math.sign(part)).toBe(Math.sign(whole));
        moved += Math.abs(part) > 5 ? 1 : 0;
      }),
      { numRuns: 15, seed: 20270815 },
    );
    expect(moved).toBeGreaterThan(4);
  });

  test('tells of rot against sprouts alone where nobody knows of how many', () => {
    const rotting = after(look(null, false, 1, 12)).rotting;
    expect(rotting).toBeGreaterThan(after(look(null, false, 12, 1)).rotting);
    expect(after(look(null, false, 0, 0))).toEqual(after());
  });
});

describe('of a garden', () => {
  const planting = { plantingId: 'tin', lot, store, liftedOn: dayNumber(2027, 8, 20) };
  const noted = (date: string, counts: Partial<Observation>): Observation => ({
    id: date,
    plantingId: 'tin',
    date,
    ...counts,
  });
  const on = (...seen: Observation[]) =>
    storedNow(planting, seen, dayNumber(2027, 12, 1), { seasons: 40, seed: 3 });
  const lifted = noted('2027-08-20', { bulbCount: 200 });

  test('the rest of what was brought in or last counted is sound', () => {
    const bad = on(lifted, noted('2027-12-01', { rottenCount: 30, sproutedCount: 5 }));
    expect(bad?.soundBulbs).toEqual({ p10: 165, p50: 165, p90: 165 });
    expect(bad?.checks).toBe(1);
    const later = on(
      lifted,
      noted('2027-10-20', { soundCount: 120 }),
      noted('2027-11-10', { rottenCount: 10 }),
      noted('2027-12-01', { sproutedCount: 1 }),
    );
    expect(later?.soundBulbs?.p50).toBe(109);
    expect(later?.checks).toBe(3);
  });

  test('what was never counted stays so, but for what comes after', () => {
    expect(on(noted('2027-12-01', { rottenCount: 30 }))).toMatchObject({ soundBulbs: null, checks: 1 });
    // more bad ones than were brought in
    const odd = on(noted('2027-08-20', { bulbCount: 20 }), noted('2027-12-01', { rottenCount: 30 }));
    expect(odd?.lastsUntil.share).toBe(1);
    const counted = on(noted('2027-11-01', { rottenCount: 3 }), noted('2027-12-01', { soundCount: 40 }));
    expect(counted?.soundBulbs?.p50).toBe(40);
  });
});
