import { expect, test } from 'vitest';
import { climateDayOf, dayNumber } from '../../src/calendar/index.ts';
import { isPractised } from '../../src/choice/practised.ts';
import { type LocalPractice, openSite, planDefaults } from '../../src/season/index.ts';
import { climateOf } from '../weather/climates.ts';

const climate = climateOf({ latitudeDeg: 32, mean: [10, 12, 15, 19, 23, 26, 27, 27, 25, 20, 15, 11] });
const day = (month: number, of: number) => dayNumber(2027, month, of);
const overNewYear: LocalPractice = {
  class: 'short',
  start: 'bought-transplants',
  source: 'invented',
  span: { from: climateDayOf(day(12, 20)), to: climateDayOf(day(1, 31)) },
};
const site = openSite({ climate, years: 2, seed: 1, practice: [overNewYear] });
const plan = (startDay: number) =>
  ({ ...planDefaults, type: 'short', start: 'bought-transplants', startDay }) as const;

test('a start is practised inside the window, over New Year too, and a week about it', () => {
  for (const inside of [day(12, 14), day(12, 31), day(1, 1), day(2, 6)])
    expect(isPractised(site, plan(inside))).toBe(true);
  for (const outside of [day(12, 10), day(2, 12), day(7, 1)])
    expect(isPractised(site, plan(outside))).toBe(false);
});

test('another class, another way, or a district without calendars has none', () => {
  expect(isPractised(site, { ...plan(day(1, 1)), type: 'intermediate' })).toBe(false);
  expect(isPractised(site, { ...plan(day(1, 1)), start: 'sets' })).toBe(false);
  expect(isPractised(openSite({ climate, years: 2, seed: 1 }), plan(day(1, 1)))).toBe(false);
});
