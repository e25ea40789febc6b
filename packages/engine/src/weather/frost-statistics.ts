import { type ClimateDay, climateYearDays } from '../calendar/index.ts';
import { mean, quantileSorted } from '../math/index.ts';
import type { WeatherSeries } from './weather-series.ts';

/** When one of a winter's frosts falls. */
export type FrostDate = {
  /** Share of winters that have a frost, 0…1. */
  share: number;
  /**
   * Climate days (0 = 1 January) by which it has fallen in 1, 5 and 9 of 10 winters that have one, counted from
   * midsummer to midsummer, so early to late also across New Year; null where no winter has one.
   */
  days: { p10: ClimateDay; p50: ClimateDay; p90: ClimateDay } | null;
};

/** Last and first frost of the growing year, over its years. */
export type FrostStatistics = {
  lastSpring: FrostDate;
  firstAutumn: FrostDate;
  /** Median number of days from a winter's last frost to the next winter's first; 365 where frost is rare. */
  frostFreeDays: number;
  /** Mean of the lowest minimum of each winter, °C. */
  meanAnnualMinimumC: number;
};

/** Climate day on which winters are cut apart: 2 July north of the equator, 1 January south of it. */
const midsummerNorth: ClimateDay = 182;
const midsummerSouth: ClimateDay = 0;

/**
 * Frost dates of a run of weather: the last and the first night below the threshold of each whole winter, winters
 * running from midsummer to midsummer.
 *
 * @param series at least three years (south of the equator two do)
 * @param thresholdC a night is a frost when its minimum is below this, °C
 * @throws RangeError for a shorter series
 */
export function frostStatistics(series: WeatherSeries, latitudeDeg: number, thresholdC = 0): FrostStatistics {
  const start = latitudeDeg < 0 ? midsummerSouth : midsummerNorth;
  const winters = Math.floor((series.days - start) / climateYearDays);
  if (winters < 2) {
    throw new RangeError(`frost statistics: expected at least three years of days, got ${series.days} days`);
  }
  const firsts: number[] = [];
  const lasts: number[] = [];
  const minima: number[] = [];
  const frostFree: number[] = [];
  let lastBefore: number | null = null;
  for (let winter = 0; winter < winters; winter++) {
    const from = start + winter * climateYearDays;
    let first = -1;
    let last = -1;
    let lowest = Number.POSITIVE_INFINITY;
    for (let day = 0; day < climateYearDays; day++) {
      const low = series.tempMinC[from + day]!;
      if (low < lowest) lowest = low;
      if (low >= thresholdC) continue;
      if (first < 0) first = day;
      last = day;
    }
    minima.push(lowest);
    if (winter > 0) {
      const untilMidsummer: number = lastBefore === null ? climateYearDays : climateYearDays - 1 - lastBefore;
      const fromMidsummer = first < 0 ? climateYearDays : first;
      frostFree.push(Math.min(untilMidsummer + fromMidsummer, climateYearDays));
    }
    lastBefore = last < 0 ? null : last;
    if (first < 0) continue;
    firsts.push(first);
    lasts.push(last);
  }
  frostFree.sort((a, b) => a - b);
  return {
    lastSpring: frostDate(lasts, winters, start),
    firstAutumn: frostDate(firsts, winters, start),
    frostFreeDays: Math.round(quantileSorted(frostFree, 0.5)),
    meanAnnualMinimumC: mean(minima),
  };
}

function frostDate(daysFromMidsummer: number[], winters: number, midsummer: ClimateDay): FrostDate {
  if (daysFromMidsummer.length === 0) return { share: 0, days: null };
  const ascending = daysFromMidsummer.toSorted((a, b) => a - b);
  const at = (share: number) => (Math.round(quantileSorted(ascending, share)) + midsummer) % climateYearDays;
  return { share: ascending.length / winters, days: { p10: at(0.1), p50: at(0.5), p90: at(0.9) } };
}
