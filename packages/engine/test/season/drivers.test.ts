import { describe, expect, test } from 'vitest';
import type { Cover } from '../../src/plant/index.ts';
import { driversOf, repeatDrivers, type Smoothed } from '../../src/season/drivers.ts';
import type { WeatherSeries } from '../../src/weather/index.ts';
import { climateOf } from '../weather/climates.ts';
import { roundGrowth } from './steady-bed.ts';

const climate = climateOf({ latitudeDeg: 50, mean: 12 });
const days = 40;
const column = (of: number | ((day: number) => number)) =>
  Float64Array.from({ length: days }, (_, day) => (typeof of === 'number' ? of : of(day)));
type Day = number | ((day: number) => number);
const weatherOf = (of: { min?: Day; max?: Day; rain?: Day; solar?: Day } = {}): WeatherSeries => ({
  days,
  tempMinC: column(of.min ?? 10),
  tempMaxC: column(of.max ?? 20),
  rainMm: column(of.rain ?? 0),
  solarMJ: column(of.solar ?? 15),
});
const felt = (of = {}, cover: Cover = 'none', smoothed: Smoothed | null = null) =>
  driversOf(weatherOf(of), cover, roundGrowth, smoothed, climate);

describe('under a cover', () => {
  // Fleece: Oregon trials 1983–84 for the minimum, maximum and light memory. Tunnel: Savage 1980, light memory.
  test.each([
    ['fleece', 1.2, 2.5, 0.85],
    ['tunnel', 1.3, 4.2, 0.8],
  ] as const)(
    'of %s nights are warmer by %d °C, days by %d °C, and light is left by %d',
    (cover, min, max, light) => {
      const [open, covered] = [felt(), felt({}, cover)];
      expect(covered.tempMinC[0]).toBeCloseTo(10 + min, 12);
      expect(covered.tempMeanC[0]).toBeCloseTo(15 + (min + max) / 2, 12);
      // both between 14 and 27 °C, where warmth takes no light
      expect(covered.growthLight[0] / open.growthLight[0]).toBeCloseTo(light, 12);
      expect(covered.usedLight[0]).toBe(open.usedLight[0]);
      expect(covered.leafTT[0]).toBeGreaterThan(open.leafTT[0]);
    },
  );
});

describe('the bed', () => {
  test('moves half of the way to the air each day', () => {
    const jump = (day: number) => (day === 0 ? 10 : 20);
    const { soilMeanC } = felt({ min: jump, max: jump });
    expect([...soilMeanC.subarray(0, 4)]).toEqual([10, 15, 17.5, 18.75]);
  });

  test('keeps e^(−1.5 / 11) of the swing at sowing depth (Hillel 1982)', () => {
    // a swing of 10 °C about 2 °C, of which the warm half counts above the base of 2 °C
    const { soilTT } = felt({ min: -8, max: 12 });
    const warmHalf = (10 * (Math.sin(Math.PI / 8) + Math.sin((3 * Math.PI) / 8))) / 4;
    expect(soilTT[0]).toBeCloseTo(warmHalf * Math.exp(-1.5 / 11), 9);
  });
});

describe('a day', () => {
  test('counts as wet from a millimetre on, and is remembered for twenty days', () => {
    expect(felt({ rain: 0.9 }).wetness[0]).toBeCloseTo(0.3 * 0.95, 12);
    expect(felt({ rain: 1 }).wetness[0]).toBeCloseTo(0.3 + 0.7 / 20, 12);
    expect(felt({ rain: 1 }).wetness[39]).toBeCloseTo(1 - 0.7 * 0.95 ** 40, 12);
  });

  test('gives light that is used less in the cold', () => {
    const { usedLight, growthLight } = felt({ min: 4, max: 14 });
    // half way from 4 to 14 °C
    expect(growthLight[0] / usedLight[0]).toBeCloseTo(0.5, 12);
  });

  test('gives degrees of leaves above 5, of leaf life above 3 and of growth above 6 °C', () => {
    const { leafTT, lifeTT, growthTT } = felt({ min: 12, max: 12 });
    expect([leafTT[0], lifeTT[0], growthTT[0]]).toEqual([7, 9, 6]);
    const hot = felt({ min: 30, max: 30 });
    expect([hot.leafTT[0], hot.lifeTT[0], hot.growthTT[0]]).toEqual([15, 27, 14]);
  });
});

describe('a mean climate', () => {
  const smoothed = { wetShare: column(0.4), spreadC: column(4) };

  test('has the means of a colder and a warmer day', () => {
    // at 5 °C, the base of leaves: none at 1 °C, four at 9 °C
    expect(felt({ min: 5, max: 5 }, 'none', smoothed).leafTT[0]).toBeCloseTo(2, 12);
    expect(felt({ min: 5, max: 5 }).leafTT[0]).toBe(0);
    // growth turns 0.1 of the light at 5 °C into none and half
    const { growthLight, usedLight } = felt({ min: 5, max: 5 }, 'none', smoothed);
    expect(growthLight[0] / usedLight[0]).toBeCloseTo(0.25, 12);
  });

  test('has nights as they are and wet days as they are counted', () => {
    const { tempMinC, wetness } = felt({ min: 5, max: 5, rain: 9 }, 'none', smoothed);
    expect(tempMinC[0]).toBe(5);
    expect(wetness[0]).toBe(0.4);
  });

  test('comes again year for year', () => {
    const year = felt({ min: (day: number) => day, max: (day: number) => day + 5 });
    const twice = repeatDrivers(year, 2);
    expect(twice.days).toBe(80);
    expect(twice.leafTT[47]).toBe(year.leafTT[7]);
    expect(twice.cold(17)[47]).toBe(year.cold(17)[7]);
    expect(twice.ripeningTT(0, 21)[47]).toBe(year.ripeningTT(0, 21)[7]);
    expect(twice.referenceEt()[47]).toBe(year.referenceEt()[7]);
  });
});

test('columns asked for by other temperatures are others', () => {
  const { ripeningTT } = felt({ min: 12, max: 12 });
  expect(ripeningTT(0, 21)[0]).toBe(12);
  expect(ripeningTT(4, 21)[0]).toBe(8);
  expect(ripeningTT(0, 21)[0]).toBe(12);
});
