import { describe, expect, it } from 'vitest';
import { frostStatistics, type WeatherSeries } from '../../src/weather/index.ts';

/** Years of 10 °C nights with frosts of −3 °C on the days named (day 0 = 1 January of the first year). */
function nights(years: number, frostDays: number[], frostC = -3): WeatherSeries {
  const tempMinC = new Float64Array(years * 365).fill(10);
  for (const day of frostDays) tempMinC[day] = frostC;
  const other = new Float64Array(years * 365);
  return { days: years * 365, tempMinC, tempMaxC: other, rainMm: other, solarMJ: other };
}

describe('frost statistics', () => {
  it('take the first and the last frost of each winter in the north', () => {
    // Winters: 20 Oct (292) … 10 Apr (99) twice.
    const frosts = [292, 300, 365 + 50, 365 + 99, 365 + 292, 730 + 99];
    const { lastSpring, firstAutumn, frostFreeDays, meanAnnualMinimumC } = frostStatistics(
      nights(3, frosts),
      50,
    );
    expect(firstAutumn).toEqual({ share: 1, days: { p10: 292, p50: 292, p90: 292 } });
    expect(lastSpring).toEqual({ share: 1, days: { p10: 99, p50: 99, p90: 99 } });
    // From 11 April to 19 October inclusive.
    expect(frostFreeDays).toBe(292 - 99 - 1);
    expect(meanAnnualMinimumC).toBe(-3);
  });

  it('do not split a southern winter at New Year', () => {
    const frosts = [150, 250, 365 + 160, 365 + 260];
    const { lastSpring, firstAutumn, frostFreeDays } = frostStatistics(nights(2, frosts), -37);
    expect(firstAutumn.days).toEqual({ p10: 151, p50: 155, p90: 159 });
    expect(lastSpring.days).toEqual({ p10: 251, p50: 255, p90: 259 });
    expect(frostFreeDays).toBe(365 + 160 - 250 - 1);
  });

  it('count a last frost before New Year as earlier than one after it', () => {
    // Last frosts: 20 December (353) in one winter, 10 January (9) in the other: the middle is 30 or 31 December.
    const { lastSpring } = frostStatistics(nights(3, [353, 2 * 365 + 9]), 40);
    expect(lastSpring.days).toEqual({ p10: 355, p50: 364, p90: 7 });
  });

  it('say that there is no frost, rather than a date', () => {
    const result = frostStatistics(nights(3, []), 10);
    expect(result.lastSpring).toEqual({ share: 0, days: null });
    expect(result.firstAutumn).toEqual({ share: 0, days: null });
    expect(result.frostFreeDays).toBe(365);
  });

  it('count the winters with a frost, and 0 °C itself as none', () => {
    const series = nights(5, [365 + 20]);
    series.tempMinC[3 * 365 + 20] = 0;
    expect(frostStatistics(series, 45).lastSpring.share).toBe(0.25);
    expect(frostStatistics(series, 45, 1).lastSpring.share).toBe(0.5);
  });

  it('refuse a run without two whole winters', () => {
    expect(() => frostStatistics(nights(2, []), 50)).toThrow('at least three years');
  });
});
