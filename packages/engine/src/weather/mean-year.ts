import { climateYearDays } from '../calendar/index.ts';
import type { MonthlyClimate } from '../climate/index.ts';
import { climateCurves } from './climate-curves.ts';
import type { WeatherSeries } from './weather-series.ts';

/** One year of smooth mean climate: rain as the mean amount a day, radiation from mean sunshine. */
export function meanYear(climate: MonthlyClimate): WeatherSeries {
  const { tempMinC, tempRangeC, rainMm, extraterrestrialMJ, clearness } = climateCurves(climate);
  return {
    days: climateYearDays,
    tempMinC,
    tempMaxC: tempMinC.map((low, day) => low + tempRangeC[day]!),
    rainMm,
    solarMJ: clearness.map((share, day) => share * extraterrestrialMJ[day]!),
  };
}
