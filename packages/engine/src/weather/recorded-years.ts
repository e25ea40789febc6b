import { climateYearDays, dayNumber } from '../calendar/index.ts';
import { applyRecord } from './apply-record.ts';
import type { DailyRecord } from './daily-record.ts';
import type { WeatherSeries } from './weather-series.ts';

/**
 * Generated years told as alternatives of the same calendar years, with the record laid over each. Seasons of
 * neighbouring years overlap in one run of years, where a day can hold the record of one of them only; so every
 * year here gets a block of its own: itself and the years after it.
 *
 * @param series generated years, at least `years + blockYears − 1` of them
 * @param year calendar year that every block begins with
 * @returns `years` blocks, one after the other, of `blockYears` × 365 days
 */
export function recordedYears(
  series: WeatherSeries,
  years: number,
  blockYears: number,
  year: number,
  record: DailyRecord,
): WeatherSeries {
  const blockDays = blockYears * climateYearDays;
  const days = years * blockDays;
  const firstDay = dayNumber(year, 1, 1);
  const out: WeatherSeries = {
    days,
    tempMinC: new Float64Array(days),
    tempMaxC: new Float64Array(days),
    rainMm: new Float64Array(days),
    solarMJ: new Float64Array(days),
  };
  for (let k = 0; k < years; k++) {
    const from = k * climateYearDays;
    const part = (column: Float64Array) => column.subarray(from, from + blockDays);
    const block = applyRecord(
      {
        days: blockDays,
        tempMinC: part(series.tempMinC),
        tempMaxC: part(series.tempMaxC),
        rainMm: part(series.rainMm),
        solarMJ: part(series.solarMJ),
      },
      firstDay,
      record,
    );
    const at = k * blockDays;
    out.tempMinC.set(block.tempMinC, at);
    out.tempMaxC.set(block.tempMaxC, at);
    out.rainMm.set(block.rainMm, at);
    out.solarMJ.set(block.solarMJ, at);
  }
  return out;
}
