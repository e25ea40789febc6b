import { describe, expect, test } from 'vitest';
import { climateDayOf, dayNumber } from '../../src/calendar/index.ts';
import type { Harvest } from '../../src/choice/harvest.ts';
import { total, type WorthParts, worthParts } from '../../src/choice/worth.ts';
import { type LocalPractice, openSite, type PlanForm, planDefaults } from '../../src/season/index.ts';
import { climateOf } from '../weather/climates.ts';
import { goodHarvest } from './stated-harvest.ts';

// All weights are ours (decision 11), in good seasons of one.
const siteOf = (meanC: number, latitudeDeg = 50, practice: LocalPractice[] = []) =>
  openSite({ climate: climateOf({ latitudeDeg, mean: meanC }), years: 2, seed: 1, practice });
const warm = siteOf(18);
const april: PlanForm = {
  ...planDefaults,
  type: 'northern-long',
  start: 'direct-seed',
  startDay: dayNumber(2027, 4, 1),
};
const partsOf = (
  plan: Partial<PlanForm> = {},
  harvest: Partial<Harvest> = {},
  site = warm,
  keeps: number | null = null,
) => worthParts(site, { ...april, ...plan }, { ...goodHarvest, ...harvest }, keeps);

test('the parts add up', () => {
  const parts = partsOf({}, { boltedShare: 0.2, days: 200 });
  expect(total(parts)).toBeCloseTo(
    Object.values(parts).reduce((sum, part) => sum + part, 0),
    12,
  );
});

describe('the crop', () => {
  test('counts good seasons whole and small bulbs by 0.3', () => {
    expect(partsOf({}, { goodShare: 0.5, smallShare: 0.2 }).chance).toBeCloseTo(0.56, 12);
  });

  test('loses 0.3 by flower where every plant runs to it', () => {
    expect(partsOf({}, { boltedShare: 0.5 }).flower).toBeCloseTo(-0.15, 12);
  });

  test('gains 0.3 by a full bulb of 13 g dry matter, and no more by a larger', () => {
    expect(partsOf({}, { dryG: 6.5 }).size).toBeCloseTo(0.15, 12);
    expect(partsOf({}, { dryG: 13 }).size).toBeCloseTo(0.3, 12);
    expect(partsOf({}, { dryG: 26 }).size).toBeCloseTo(0.3, 12);
  });

  test('gains 0.1 by keeping, from six weeks to nine months (memory)', () => {
    const keeping = (months: number) => partsOf({}, {}, warm, months).keeping;
    expect([keeping(1), keeping(1.5), keeping(9), keeping(12)]).toEqual([0, 0, 0.1, 0.1]);
    expect(keeping(5.25)).toBeCloseTo(0.05, 12);
  });

  test('keeps by its dry matter where nothing else is known, sweet 8 % and storage 12 %', () => {
    const keeping = (dryMatterShare: number) =>
      partsOf({
        traits: { criticalPhotoperiodH: null, ripeningFactor: null, boltingFactor: null, dryMatterShare },
      }).keeping;
    expect(keeping(0.08)).toBeCloseTo(0, 12);
    expect(keeping(0.1)).toBeCloseTo(0.05, 12);
    expect(keeping(0.12)).toBeCloseTo(0.1, 12);
  });
});

describe('the care', () => {
  test('beyond 150 days costs 0.35 a year', () => {
    expect(partsOf({}, { days: 150 }).time).toBeCloseTo(0, 12);
    expect(partsOf({}, { days: 150 + 73 }).time).toBeCloseTo(-0.07, 12);
    expect(partsOf({}, { days: 100 }).time).toBeCloseTo(0, 12);
  });

  test('of what never ripens is that of a year', () => {
    expect(partsOf({}, { days: null }).time).toBeCloseTo((-0.35 * 215) / 365, 12);
  });

  test('of rows and trays costs a little, of sets nothing', () => {
    expect(partsOf({ start: 'direct-seed' }).work).toBe(-0.02);
    expect(partsOf({ start: 'raised-seedlings' }).work).toBe(-0.03);
    expect(partsOf({ start: 'bought-transplants' }).work).toBe(-0.03);
    expect(partsOf({ start: 'sets' }).work).toBeCloseTo(0, 12);
  });
});

describe('a bed too cold', () => {
  test('to sow in costs a whole good season', () => {
    expect(partsOf({}, {}, siteOf(5.9)).coldBed).toBe(-1);
    expect(partsOf({}, {}, siteOf(6.1)).coldBed).toBe(0);
  });

  test('for seedlings until they have outgrown their trays costs as much', () => {
    expect(partsOf({ start: 'raised-seedlings' }, {}, siteOf(5.9)).coldBed).toBe(-1);
    expect(partsOf({ start: 'raised-seedlings' }, {}, siteOf(7.1)).coldBed).toBe(0);
  });
});

describe('tops that go over in the cool', () => {
  test('cost 0.02 for each degree below 15 °C (memory), up to 0.2', () => {
    expect(partsOf({}, {}, siteOf(15)).drying).toBeCloseTo(0, 9);
    expect(partsOf({}, {}, siteOf(12)).drying).toBeCloseTo(-0.06, 9);
    expect(partsOf({}, {}, siteOf(1)).drying).toBeCloseTo(-0.2, 9);
  });

  test('go by the air of the day on which they do', () => {
    const mean = [2, 2, 6, 10, 15, 19, 21, 21, 16, 10, 5, 2];
    const site = openSite({ climate: climateOf({ latitudeDeg: 50, mean }), years: 2, seed: 1 });
    const dryingOn = (month: number, day: number) =>
      partsOf({}, { days: dayNumber(2027, month, day) - april.startDay }, site).drying;
    expect(dryingOn(8, 1)).toBeCloseTo(0, 12);
    expect(dryingOn(10, 15)).toBeCloseTo(-0.1, 2);
  });

  test('and tops that never go cost as much as the coldest', () => {
    expect(partsOf({}, { days: null }).drying).toBe(-0.2);
  });
});

test('what growers of the district do gains 0.15', () => {
  const day = climateDayOf(april.startDay);
  const custom = {
    class: 'long',
    start: 'direct-seed',
    source: 'invented',
    span: { from: day, to: day },
  } as const;
  const site = siteOf(18, 50, [custom]);
  expect(partsOf({}, {}, site).practice).toBe(0.15);
  expect(partsOf({ startDay: april.startDay + 60 }, {}, site).practice).toBe(0);
  expect(partsOf({}).practice).toBe(0);
});

describe('what shops seldom have', () => {
  // At 50° the longest day has 16.3 h; short-day kinds are at home to 15.4 h (memory).
  const awayH = warm.longestDayH - 15.4;
  const scarce = (plan: Partial<PlanForm>, site = warm): WorthParts['scarce'] =>
    partsOf(plan, {}, site).scarce;

  test('is nothing that is at home', () => {
    expect(scarce({})).toBeCloseTo(0, 12);
    expect(scarce({ start: 'sets' })).toBeCloseTo(0, 12);
  });

  test('is a kind of another latitude, the more the farther off', () => {
    expect(awayH).toBeGreaterThan(0.5);
    expect(scarce({ type: 'short' })).toBeCloseTo(-0.2 - 0.2 * awayH, 12);
    // a few minutes beyond its home: 2 for each hour, and the 0.2
    const edge = { ...warm, longestDayH: 15.45 };
    expect(scarce({ type: 'short' }, edge)).toBeCloseTo(-0.1 - 0.01, 9);
  });

  test('is a set of other than long-day kinds, but for those that winter', () => {
    const intermediateAway = warm.longestDayH - 15.6;
    expect(scarce({ type: 'intermediate', start: 'sets' })).toBeCloseTo(-0.2 - 0.2 * intermediateAway, 12);
    const autumn = { startDay: dayNumber(2027, 9, 20), start: 'sets' } as const;
    expect(scarce({ ...autumn, type: 'intermediate' })).toBeCloseTo(0, 12);
    expect(scarce({ ...autumn, type: 'short' })).toBeLessThanOrEqual(-0.2);
  });

  test('is worth a whole good season where it is not to be had at all', () => {
    expect(scarce({ start: 'sets', startDay: dayNumber(2027, 7, 1) })).toBe(-1);
  });
});
