import { describe, expect, test } from 'vitest';
import { dayNumber } from '../../src/calendar/index.ts';
import { openSite, type Plan, planDefaults, runnerOf } from '../../src/season/index.ts';
import { climateOf } from '../weather/climates.ts';

const siteOf = (mean: number[] | number, rain = 60) =>
  openSite({ climate: climateOf({ latitudeDeg: 50, mean, rain }), years: 3, seed: 1 });
const mild = siteOf([3, 4, 7, 10, 14, 17, 19, 19, 15, 11, 6, 4], 5);
const hard = siteOf([-25, -22, -12, 2, 11, 16, 18, 16, 10, 2, -10, -20]);
const day = (month: number, of: number) => dayNumber(2027, month, of);
const raised: Plan = {
  ...planDefaults,
  type: 'northern-long',
  start: 'raised-seedlings',
  startDay: day(2, 20),
  nurseryTempC: 18,
};

describe('a runner used before', () => {
  /** Planted out when the season is long over: nothing ever stands in the bed. */
  const never = (runner: ReturnType<typeof runnerOf>, startDay: number) => {
    runner.moveTo(startDay, startDay + 700);
    return { ...runner.season(0) };
  };

  test('says nothing of the crop before where none stands', () => {
    const used = runnerOf(mild, raised);
    const before = { ...used.season(0) };
    expect(before.onsetOn).toBeGreaterThan(0);
    expect(before.thirstyDays).toBeGreaterThan(0);
    expect(before.bulbDryG).toBeGreaterThan(0);
    expect(never(used, raised.startDay)).toEqual(never(runnerOf(mild, raised), raised.startDay));
  });

  test('says nothing of a stand that was lost', () => {
    const used = runnerOf(hard, { ...raised, startDay: day(7, 20), plantOutDay: day(9, 1) });
    expect(used.season(0).aliveShare).toBeLessThan(0.1);
    expect(never(used, raised.startDay)).toMatchObject({
      aliveShare: 1,
      liftedShare: 0,
      onsetOn: 0,
      fellOn: 0,
    });
  });

  test('tells thirst again after it was not asked for it', () => {
    const used = runnerOf(mild, raised);
    expect(used.quickSeason(0).thirstyDays).toBe(0);
    expect(used.meanSeason().thirstyDays).toBe(0);
    expect({ ...used.season(0) }).toEqual({ ...runnerOf(mild, raised).season(0) });
  });

  test('moved to another day is one that stood there from the first', () => {
    for (const startDay of [day(3, 20), day(8, 25), day(12, 24)]) {
      const plan: Plan = { ...raised, start: 'direct-seed' };
      const moved = runnerOf(mild, plan);
      moved.moveTo(startDay, null);
      expect({ ...moved.season(1) }).toEqual({ ...runnerOf(mild, { ...plan, startDay }).season(1) });
    }
  });
});

describe('a nursery', () => {
  const nurseryAt = (meanC: number, nurseryTempC: number | null = null) =>
    runnerOf(siteOf(meanC), { ...raised, nurseryTempC }).nurseryTempC;

  test('is a seedbed outdoors where the climate at sowing has 10 °C, else indoors at 15 °C (Iowa State Extension: 13–18)', () => {
    expect(nurseryAt(10.1)).toBeNull();
    expect(nurseryAt(9.9)).toBe(15);
  });

  test('is as warm as the plan says', () => {
    expect(nurseryAt(20, 12)).toBe(12);
  });
});
