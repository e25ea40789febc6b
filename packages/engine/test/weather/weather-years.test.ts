import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { firstDayOfMonth, monthLengths } from '../../src/calendar/index.ts';
import type { MonthlyClimate } from '../../src/climate/index.ts';
import { mean, standardDeviation } from '../../src/math/index.ts';
import { meanYear, type WeatherSeries, weatherYears } from '../../src/weather/index.ts';
import { climateOf, coldInland, hotDesert, wetTropics, wetWinterCoast } from './climates.ts';

const climates = { wetWinterCoast, coldInland, hotDesert, wetTropics };

/** All days of one month of a run, years joined. */
function monthOf(values: Float64Array, month: number): Float64Array {
  const first = firstDayOfMonth[month]!;
  return values.filter((_, day) => day % 365 >= first && day % 365 < first + monthLengths[month]!);
}

describe.each(Object.entries(climates))(
  'a thousand generated years of %s',
  (_name, climate: MonthlyClimate) => {
    const years = 1000;
    const run = weatherYears(climate, years, 11);
    const smooth = meanYear(climate);

    // Tolerances are about three standard errors of a thousand-year mean, at the widest spread among the climates:
    // monthly means differ by 0.4–0.5 σ between years, and years are not quite independent.
    it.each([...Array(12).keys()])('keeps the climate’s own means in month %i', (month) => {
      const spread = climate.minTempSdC[month]!;
      const low = mean(monthOf(run.tempMinC, month));
      const high = mean(monthOf(run.tempMaxC, month));
      const range = climate.tempRangeC[month]!;
      expect(Math.abs(low - (climate.tempMeanC[month]! - range / 2))).toBeLessThan(0.065 * spread);
      expect(Math.abs(high - (climate.tempMeanC[month]! + range / 2))).toBeLessThan(
        0.065 * spread + 0.02 * range,
      );

      const rains = monthOf(run.rainMm, month);
      const wetShare = rains.filter((mm) => mm >= 0.1).length / rains.length;
      const possible = climate.rainMm[month]! > 0 ? climate.wetDays[month]! / monthLengths[month]! : 0;
      // Binomial, widened by a persistence of up to 0.31: (1 + 0.31) / (1 − 0.31).
      const wetError = Math.sqrt((possible * (1 - possible) * 1.9) / rains.length);
      expect(Math.abs(wetShare - Math.min(possible, 0.98))).toBeLessThan(3.5 * wetError + 0.0005);
      const total = mean(rains) * monthLengths[month]!;
      const wetDays = Math.max(climate.wetDays[month]! * years, 1);
      // Variation of amounts on wet days up to 1.8, of chains up to another 1.4, of months 0.22.
      const standardError = Math.sqrt(2.3 ** 2 / wetDays + 0.22 ** 2 / years);
      expect(Math.abs(total - climate.rainMm[month]!)).toBeLessThanOrEqual(
        3.5 * standardError * climate.rainMm[month]!,
      );

      const sun = mean(monthOf(smooth.solarMJ, month));
      expect(Math.abs(mean(monthOf(run.solarMJ, month)) - sun)).toBeLessThan(0.02 * sun + 0.01);
    });

    it.each([...Array(12).keys()])('spreads the minimum as far as the climate says in month %i', (month) => {
      const spread = standardDeviation(monthOf(run.tempMinC, month));
      const wanted = climate.minTempSdC[month]!;
      expect(spread).toBeGreaterThan(0.94 * wanted);
      // Where the season's own drift fills most of a month's spread (inland cold in autumn), days keep some of theirs.
      expect(spread).toBeLessThan(1.12 * wanted);
    });
  },
);

describe('weather years', () => {
  it('begin a longer run with the shorter one of the same seed', () => {
    const short = weatherYears(wetWinterCoast, 3, 5);
    const long = weatherYears(wetWinterCoast, 30, 5);
    for (const field of ['tempMinC', 'tempMaxC', 'rainMm', 'solarMJ'] as const) {
      expect(long[field].subarray(0, short.days)).toEqual(short[field]);
    }
  });

  it('differ between seeds', () => {
    const one = weatherYears(wetWinterCoast, 1, 5).tempMinC;
    const other = weatherYears(wetWinterCoast, 1, 6).tempMinC;
    expect(one.filter((value, day) => value !== other[day]).length).toBe(365);
  });

  it('have no sun in polar night and some all round the clock in polar day', () => {
    const { solarMJ } = weatherYears(climateOf({ latitudeDeg: 75, mean: -5 }), 5, 1);
    const on = (climateDay: number) => solarMJ.filter((_, day) => day % 365 === climateDay);
    expect([...on(354)]).toEqual([0, 0, 0, 0, 0]);
    expect(Math.min(...on(171))).toBeGreaterThan(1);
  });

  it('stay within the believable for any monthly table, and are the same again', () => {
    const months = (low: number, high: number) =>
      fc.array(fc.double({ min: low, max: high, noNaN: true }), { minLength: 12, maxLength: 12 });
    const tables = fc.record({
      latitudeDeg: fc.double({ min: -60, max: 75, noNaN: true }),
      elevationM: fc.double({ min: -100, max: 4500, noNaN: true }),
      mean: months(-45, 38),
      range: months(0, 20),
      rain: months(0, 900),
      wetDays: months(0, 28),
      sunshine: months(0, 100),
      minSd: months(1.5, 7),
    });
    fc.assert(
      fc.property(tables, fc.integer(), (table, seed) => {
        const climate = climateOf(table);
        const run = weatherYears(climate, 2, seed);
        expect(run.days).toBe(730);
        expect(problemsOf(run)).toEqual([]);
        expect(problemsOf(meanYear(climate))).toEqual([]);
        expect(weatherYears(climate, 2, seed)).toEqual(run);
      }),
      { seed: 20260301, numRuns: 150 },
    );
  });
});

function problemsOf({ days, tempMinC, tempMaxC, rainMm, solarMJ }: WeatherSeries): string[] {
  const problems: string[] = [];
  for (let day = 0; day < days; day++) {
    const [low, high, rain, sun] = [tempMinC[day]!, tempMaxC[day]!, rainMm[day]!, solarMJ[day]!];
    if (![low, high, rain, sun].every(Number.isFinite))
      problems.push(`day ${day} has a value that is no number`);
    if (low > high) problems.push(`day ${day}: minimum ${low} above maximum ${high}`);
    if (rain < 0) problems.push(`day ${day}: rain ${rain}`);
    if (sun < 0 || sun > 50) problems.push(`day ${day}: radiation ${sun}`);
  }
  return problems;
}
