import { describe, expect, test } from 'vitest';
import { dayNumber } from '../../src/calendar/index.ts';
import { typeForClass, usesOfClass } from '../../src/choice/index.ts';
import { dayLengthClasses, startMethods } from '../../src/plant/index.ts';
import { openSite } from '../../src/season/index.ts';
import { climateOf } from '../weather/climates.ts';

const siteAt = (latitudeDeg: number) =>
  openSite({
    climate: climateOf({ latitudeDeg, mean: [4, 5, 7, 10, 13, 16, 19, 19, 16, 11, 7, 4] }),
    years: 3,
    seed: 1,
  });
const london = siteAt(51.5);
const tasmania = siteAt(-51.5);

// Common practice, no source.
describe('what a packet of long-day onions holds', () => {
  test.each([
    ['seed in spring', 'direct-seed', 3, 20, 'northern-long'],
    ['seed in the middle of June', 'direct-seed', 6, 15, 'northern-long'],
    ['seed in July, which can only winter', 'direct-seed', 7, 5, 'early-long'],
    ['seed in August', 'direct-seed', 8, 20, 'early-long'],
    ['sets in spring', 'sets', 3, 20, 'northern-long'],
    ['sets in autumn', 'sets', 10, 1, 'early-long'],
    ['plants in June', 'bought-transplants', 6, 1, 'northern-long'],
  ] as const)('%s at 51° N', (_, start, month, day, type) => {
    expect(typeForClass(london, 'long', start, dayNumber(2027, month, day))).toBe(type);
  });

  test('turns with the seasons south of the equator', () => {
    expect(typeForClass(tasmania, 'long', 'direct-seed', dayNumber(2027, 8, 20))).toBe('northern-long');
    expect(typeForClass(tasmania, 'long', 'direct-seed', dayNumber(2027, 3, 1))).toBe('early-long');
  });

  test('at 35° is early long-day seed all year, but keepers as sets of spring', () => {
    const site = siteAt(35);
    expect(usesOfClass(site, 'long', 'direct-seed')).toHaveLength(1);
    expect(typeForClass(site, 'long', 'sets', dayNumber(2027, 3, 1))).toBe('northern-long');
  });
});

test('every day of the year has one type for a class and way of starting', () => {
  for (const site of [london, tasmania, siteAt(10)])
    for (const dayLengthClass of dayLengthClasses)
      for (const start of startMethods)
        for (let day = dayNumber(2027, 1, 1); day <= dayNumber(2027, 12, 31); day += 5) {
          const usual = usesOfClass(site, dayLengthClass, start).filter(({ isUsual }) => isUsual(day));
          expect(usual.map(({ type }) => type)).toEqual([typeForClass(site, dayLengthClass, start, day)]);
        }
});
