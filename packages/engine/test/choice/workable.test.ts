import { describe, expect, test } from 'vitest';
import { dayNumber } from '../../src/calendar/index.ts';
import { coldBed, hindranceOn, isWorkable, rootingDays, workableBedC } from '../../src/choice/workable.ts';
import { openSite } from '../../src/season/index.ts';
import { climateOf } from '../weather/climates.ts';

const siteOf = (mean: number[]) =>
  openSite({ climate: climateOf({ latitudeDeg: 60, mean }), years: 3, seed: 1 });
const cold = siteOf([-6, -6, -2, 4, 10, 15, 17, 16, 11, 6, 1, -3]);
const winter = dayNumber(2026, 11, 27);

test('a frozen bed is told, with the first day on which it can be worked', () => {
  const found = coldBed(cold, 'sets', winter);
  expect(found?.soilC).toBeLessThan(workableBedC);
  const from = found?.workableFrom ?? 0;
  expect(isWorkable(cold, 'sets', from)).toBe(true);
  expect(isWorkable(cold, 'sets', from - 1)).toBe(false);
  expect(from).toBeGreaterThan(dayNumber(2027, 4, 1));
  expect(from).toBeLessThan(dayNumber(2027, 6, 1));
});

test('a bed that turns cold within a fortnight takes no more plants', () => {
  const { soilMeanC } = cold.mean('none');
  const newYear = dayNumber(2027, 1, 1);
  const days = Array.from({ length: 365 }, (_, day) => day);
  const lastWarm = days.findLast((day) => soilMeanC[day] >= workableBedC)!;
  expect(isWorkable(cold, 'sets', newYear + lastWarm - rootingDays)).toBe(true);
  const tooLate = newYear + lastWarm - rootingDays + 1;
  expect(coldBed(cold, 'sets', tooLate)).toMatchObject({ isTurning: true });
  expect(coldBed(cold, 'sets', newYear + lastWarm + 1)).toMatchObject({ isTurning: false });
  expect(isWorkable(cold, 'raised-seedlings', tooLate)).toBe(true);
});

test('trays wait for no bed, and a warm bed is worked at once', () => {
  expect(coldBed(cold, 'raised-seedlings', winter)).toBeNull();
  expect(coldBed(cold, 'sets', dayNumber(2027, 7, 1))).toBeNull();
});

test('where no bed is ever warm enough there is no such day', () => {
  const polar = siteOf([-20, -20, -18, -10, -4, 0, 3, 2, -2, -8, -14, -18]);
  expect(coldBed(polar, 'direct-seed', winter)?.workableFrom).toBeNull();
});

describe('sets are to be had', () => {
  const mild = (latitudeDeg: number) =>
    openSite({ climate: climateOf({ latitudeDeg, mean: Array(12).fill(15) }), years: 3, seed: 1 });
  // Common practice, no source; Kapurthala plants sets in the middle of July (KVK Kapurthala 2017).
  test.each([
    [51.5, 4, 1, null],
    [51.5, 5, 25, null],
    [51.5, 6, 10, 'no-sets'],
    [51.5, 7, 16, 'no-sets'],
    [51.5, 8, 5, 'no-sets'],
    [51.5, 8, 22, null],
    [51.5, 9, 20, null],
    [-45, 10, 1, null],
    [-45, 12, 20, 'no-sets'],
    [31.4, 7, 16, null],
  ] as const)('at %s° in month %i, day %i: %s', (latitudeDeg, month, day, expected) => {
    expect(hindranceOn(mild(latitudeDeg), 'sets', dayNumber(2027, month, day))).toBe(expected);
  });

  test('plants are sold in the same months, seed always', () => {
    expect(hindranceOn(mild(51.5), 'bought-transplants', dayNumber(2027, 7, 1))).toBe('no-plants');
    expect(hindranceOn(mild(51.5), 'bought-transplants', dayNumber(2027, 5, 1))).toBeNull();
    expect(hindranceOn(mild(51.5), 'direct-seed', dayNumber(2027, 7, 1))).toBeNull();
  });
});

test('seedlings do not stand in trays from autumn to spring', () => {
  const sownOn = (month: number, day: number) =>
    hindranceOn(cold, 'raised-seedlings', dayNumber(2027, month, day));
  expect(sownOn(10, 15)).toBe('long-tray');
  expect(sownOn(12, 1)).toBe('long-tray');
  expect(sownOn(2, 15)).toBeNull();
  expect(sownOn(7, 1)).toBeNull();
});

test('seedlings stand in trays for six weeks at the least and seventeen at the most (common practice, no source)', () => {
  const { tempMeanC } = cold.mean('none');
  const newYear = dayNumber(2027, 1, 1);
  const isWarm = (day: number) => tempMeanC[day] >= 7;
  const first = Array.from({ length: 365 }, (_, day) => day).find(isWarm)!;
  const last = Array.from({ length: 365 }, (_, day) => day).findLast(isWarm)!;
  const sownOn = (day: number) => hindranceOn(cold, 'raised-seedlings', newYear + day);
  expect(sownOn(first - 17 * 7)).toBeNull();
  expect(sownOn(first - 17 * 7 - 1)).toBe('long-tray');
  expect(sownOn(last - 6 * 7)).toBeNull();
  expect(sownOn(last - 6 * 7 + 1)).toBe('long-tray');
});
