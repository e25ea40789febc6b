import { describe, expect, test } from 'vitest';
import {
  dayNumber,
  eatFirst,
  formatDay,
  learnStore,
  type MonthlyClimate,
  type Observation,
  storeClimateOf,
  storeDrawsOf,
  storedNow,
} from '../../src/index.ts';

const store = storeClimateOf({} as MonthlyClimate, { tempC: 8, humidityPct: 70 });
const lot = { keepsMonths: [5, 7], thickNeckShare: 0.05, bruisedShare: 0 } as const;
const planting = { plantingId: 'tin', lot, store, liftedOn: null };
const run = { seasons: 40, seed: 3 };
const lifted: Observation = {
  id: '1',
  plantingId: 'tin',
  date: '2027-08-20',
  lifted: true,
  weighedKg: 20,
  bulbCount: 200,
};
const look = (date: string, soundCount: number, rottenCount: number): Observation => ({
  id: date,
  plantingId: 'tin',
  date,
  soundCount,
  sproutedCount: 0,
  rottenCount,
});

describe('what is learnt of a store', () => {
  test('without a look is nothing', () => {
    expect(learnStore(lot, store, 231, [], 30, 5)).toEqual(storeDrawsOf(30, 5));
  });

  test('is that it rots quicker where more rot was found', () => {
    const rotting = (rotten: number) => {
      const check = {
        day: 60,
        sound: 200 - rotten,
        isSoundCounted: true,
        sprouted: 0,
        rotten,
        massShare: null,
      };
      const draws = learnStore(lot, store, 231, [check], 30, 5);
      return draws.reduce((sum, draw) => sum + draw.rotting, 0);
    };
    expect(rotting(30)).toBeGreaterThan(1.5 * rotting(2));
  });
});

describe('what a planting has in store', () => {
  const on = (day: number, ...looks: Observation[]) => storedNow(planting, [lifted, ...looks], day, run);

  test('is nothing before it is lifted', () => {
    expect(on(dayNumber(2027, 8, 1))).toBeNull();
    expect(storedNow(planting, [], dayNumber(2027, 12, 1), run)).toBeNull();
  });

  test('is less than was brought in, and less still where more has rotted', () => {
    const day = dayNumber(2027, 11, 20);
    const plain = on(day);
    expect(plain?.soundBulbs?.p50).toBeLessThan(200);
    expect(plain?.soundKg?.p50).toBeLessThan(20);
    const bad = on(day, look('2027-11-01', 130, 70));
    expect(bad?.checks).toBe(1);
    expect(bad?.soundBulbs?.p50).toBeLessThan(130.001);
    expect(bad?.soundShare.p50).toBeLessThan(plain?.soundShare.p50 ?? 0);
  });
});

describe('thick necks counted as bulbs come in', () => {
  const day = dayNumber(2027, 12, 1);
  const withNecks = (...counts: Partial<Observation>[]) => {
    const seen = counts.map((count, at) => ({ id: `${at}`, plantingId: 'tin', date: lifted.date, ...count }));
    return storedNow({ ...planting, liftedOn: dayNumber(2027, 8, 20) }, seen, day, run);
  };

  test('shorten its keeping, where more are thick than usual', () => {
    const lasts = (count: Partial<Observation>) =>
      withNecks({ bulbCount: 200, ...count })?.lastsUntil.days?.p50 ?? 0;
    expect(lasts({ thickNeckCount: 10 })).toBe(lasts({}));
    expect(lasts({ thickNeckCount: 80 })).toBeLessThan(lasts({}));
    expect(lasts({ thickNeckCount: 0 })).toBeGreaterThanOrEqual(lasts({}));
  });

  test('are a share of the bulbs counted with them, else of all brought in', () => {
    const share = (...counts: Partial<Observation>[]) => withNecks(...counts)?.thickNeckShare;
    expect(share({ bulbCount: 200 })).toBe(lot.thickNeckShare);
    expect(share({ bulbCount: 150, thickNeckCount: 30 }, { bulbCount: 50, thickNeckCount: 20 })).toBe(0.25);
    expect(share({ bulbCount: 150 }, { bulbCount: 50, thickNeckCount: 20 })).toBe(0.4);
    expect(share({ bulbCount: 200 }, { thickNeckCount: 50 })).toBe(0.25);
    expect(share({ thickNeckCount: 50 })).toBe(lot.thickNeckShare);
    expect(share({ bulbCount: 10, thickNeckCount: 50 })).toBe(1);
  });
});

test('the next look is told until it is done or gone by', () => {
  const on = (day: number, ...looks: Observation[]) =>
    storedNow(planting, [lifted, ...looks], day, run)?.nextLook ?? 0;
  const brought = dayNumber(2027, 8, 20);
  const first = on(brought);
  expect(first).toBeGreaterThan(brought);
  expect(on(first)).toBe(first);
  const second = on(first + 1);
  expect(second).toBeGreaterThan(first + 30);
  expect(on(first, look(formatDay(first), 190, 10))).toBe(second);
});

test('thick necks are eaten first, then what is going, then what ends soonest', () => {
  const ends = (p50: number) => ({ share: 1, days: { p10: p50, p50, p90: p50 } });
  const order = eatFirst([
    { plantingId: 'late', lastsUntil: ends(300), lostNextShare: 0, thickNeckShare: 0 },
    { plantingId: 'soon', lastsUntil: ends(200), lostNextShare: 0, thickNeckShare: 0 },
    { plantingId: 'going', lastsUntil: ends(400), lostNextShare: 0.4, thickNeckShare: 0 },
    { plantingId: 'thick', lastsUntil: ends(400), lostNextShare: 0, thickNeckShare: 0.5 },
  ]);
  expect(order.map(({ plantingId }) => plantingId)).toEqual(['thick', 'going', 'soon', 'late']);
});
