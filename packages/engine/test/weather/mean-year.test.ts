import { describe, expect, it } from 'vitest';
import { firstDayOfMonth, monthLengths } from '../../src/calendar/index.ts';
import { mean } from '../../src/math/index.ts';
import { extraterrestrialRadiation, solarRadiation } from '../../src/sky/index.ts';
import { meanYear } from '../../src/weather/index.ts';
import { hotDesert, wetWinterCoast } from './climates.ts';

describe.each([wetWinterCoast, hotDesert])('the mean year at latitude $latitudeDeg', (climate) => {
  const year = meanYear(climate);
  const monthOf = (values: Float64Array, month: number) =>
    values.subarray(firstDayOfMonth[month]!, firstDayOfMonth[month]! + monthLengths[month]!);

  it.each([...Array(12).keys()])('keeps the monthly table in month %i', (month) => {
    const low = mean(monthOf(year.tempMinC, month));
    const high = mean(monthOf(year.tempMaxC, month));
    expect((low + high) / 2).toBeCloseTo(climate.tempMeanC[month]!, 6);
    expect(high - low).toBeCloseTo(climate.tempRangeC[month]!, 6);
    expect(mean(monthOf(year.rainMm, month)) * monthLengths[month]!).toBeCloseTo(climate.rainMm[month]!, 6);
  });

  it('takes radiation from sunshine by Ångström', () => {
    // Mid-month days: the daily curve of sunshine is then near the month's own value.
    for (const [month, day] of [
      [2, 73],
      [6, 196],
    ] as const) {
      const ra = extraterrestrialRadiation(climate.latitudeDeg, day + 1);
      const expected = solarRadiation(ra, climate.sunshinePct[month]! / 100);
      expect(Math.abs(year.solarMJ[day]! - expected)).toBeLessThan(0.04 * expected);
    }
  });

  it('is smooth: no step from one day to the next, New Year included', () => {
    for (let day = 0; day < 365; day++) {
      expect(Math.abs(year.tempMinC[(day + 1) % 365]! - year.tempMinC[day]!)).toBeLessThan(0.4);
    }
  });
});
