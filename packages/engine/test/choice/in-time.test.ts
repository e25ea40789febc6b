import { describe, expect, test } from 'vitest';
import { dayNumber } from '../../src/calendar/index.ts';
import { harvester } from '../../src/choice/harvest.ts';
import { inTimeRule } from '../../src/choice/in-time.ts';
import { scanStarts } from '../../src/choice/start-scan.ts';
import { dayInYear, weekStarts } from '../../src/choice/week-starts.ts';
import { total, worthParts } from '../../src/choice/worth.ts';
import { openSite, type Plan, planDefaults, referenceBulbG, runnerOf } from '../../src/season/index.ts';
import { climateOf } from '../weather/climates.ts';
import { goodHarvest } from './stated-harvest.ts';

const plan: Plan = {
  ...planDefaults,
  type: 'northern-long',
  start: 'sets',
  startDay: dayNumber(2027, 3, 20),
};
const mean = [3, 4, 7, 10, 14, 17, 19, 19, 15, 11, 6, 4];
const site = openSite({ climate: climateOf({ latitudeDeg: 50, mean }), years: 3, seed: 1 });
const newYear = dayNumber(2027, 1, 1);
const weeks = weekStarts.map((day) => dayInYear(2027, day));

describe('a start is in time', () => {
  const rule = inTimeRule(site, scanStarts(site, plan, newYear));

  test('that is as good as the best', () => {
    expect(rule.isInTime(plan.startDay, goodHarvest)).toBe(true);
  });

  test('only while the bed can be worked and sets are to be had', () => {
    expect(rule.isInTime(dayNumber(2027, 1, 15), goodHarvest)).toBe(false);
    expect(rule.isInTime(dayNumber(2027, 7, 1), goodHarvest)).toBe(false);
  });

  test('only on days on which its kind is usual', () => {
    const late = inTimeRule(
      site,
      scanStarts(site, plan, newYear, (day) => day > dayNumber(2027, 3, 25)),
    );
    expect(late.isInTime(dayNumber(2027, 3, 20), goodHarvest)).toBe(false);
    expect(late.isInTime(dayNumber(2027, 4, 1), goodHarvest)).toBe(true);
  });

  test('up to 0.25 of a good season behind the best week', () => {
    const [best] = weeks.filter((day) => rule.isWindow([day]));
    const ofBest = { ...plan, startDay: best };
    const harvest = harvester(site, ofBest, runnerOf(site, ofBest), referenceBulbG(site, ofBest))();
    // flower costs 0.3 where all plants run to it, and nothing else
    const behind = (by: number) => ({
      ...harvest,
      goodShare: 1,
      boltedShare: harvest.boltedShare + by / 0.3,
    });
    const lag = (by: number) =>
      total(worthParts(site, ofBest, harvest, null)) - total(worthParts(site, ofBest, behind(by), null));
    const even = lag(0);
    expect(rule.isInTime(best, behind(0.24 - even))).toBe(true);
    expect(rule.isInTime(best, behind(0.26 - even))).toBe(false);
  });

  test('only where half of the seasons end well, even if no week is better', () => {
    const equator = openSite({ climate: climateOf({ latitudeDeg: 0, mean: 24 }), years: 3, seed: 1 });
    const { isInTime } = inTimeRule(equator, scanStarts(equator, plan, newYear));
    expect(isInTime(plan.startDay, { ...goodHarvest, goodShare: 0.5 })).toBe(true);
    expect(isInTime(plan.startDay, { ...goodHarvest, goodShare: 0.49 })).toBe(false);
  });
});

test('where beds are never warm enough no start is in time, though none is better', () => {
  const cold = openSite({ climate: climateOf({ latitudeDeg: 50, mean: 5 }), years: 3, seed: 1 });
  expect(inTimeRule(cold, scanStarts(cold, plan, newYear)).isInTime(plan.startDay, goodHarvest)).toBe(false);
});

describe('weeks in time make a window', () => {
  const { isWindow } = inTimeRule(site, scanStarts(site, plan, newYear));

  test('from three in a row on', () => {
    const far = dayNumber(2027, 8, 27);
    expect(isWindow([far, far + 7])).toBe(false);
    expect(isWindow([far, far + 7, far + 14])).toBe(true);
  });

  test('or where the best week of the year is among them, whatever the year', () => {
    const best = weeks.filter((day) => isWindow([day]));
    expect(best).toHaveLength(1);
    // over a leap day
    expect(isWindow([best[0] + 366])).toBe(true);
  });
});
