import { expect, test } from 'vitest';
import { dayNumber } from '../../src/calendar/index.ts';
import { coldBed, isWorkable, workableBedC } from '../../src/choice/workable.ts';
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

test('trays wait for no bed, and a warm bed is worked at once', () => {
  expect(coldBed(cold, 'raised-seedlings', winter)).toBeNull();
  expect(coldBed(cold, 'sets', dayNumber(2027, 7, 1))).toBeNull();
});

test('where no bed is ever warm enough there is no such day', () => {
  const polar = siteOf([-20, -20, -18, -10, -4, 0, 3, 2, -2, -8, -14, -18]);
  expect(coldBed(polar, 'direct-seed', winter)?.workableFrom).toBeNull();
});
