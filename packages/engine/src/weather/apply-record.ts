import { civilDate, climateDayOf, climateYearDays, type DayNumber, dayNumber } from '../calendar/index.ts';
import type { DailyRecord } from './daily-record.ts';
import type { WeatherSeries } from './weather-series.ts';

/**
 * The series with measured days in place of its own wherever the record knows them; the series itself is left
 * alone. A day with only one of minimum and maximum keeps the series' range about it. 29 February has no place in
 * a series and is passed over.
 *
 * @param seriesFirstDay day number of the series' day 0, a 1 January
 * @throws RangeError where it is not
 */
export function applyRecord(
  series: WeatherSeries,
  seriesFirstDay: DayNumber,
  record: DailyRecord,
): WeatherSeries {
  const firstYear = civilDate(seriesFirstDay).year;
  if (dayNumber(firstYear, 1, 1) !== seriesFirstDay) {
    throw new RangeError(`apply record: a series begins on 1 January, got day number ${seriesFirstDay}`);
  }
  const joined: WeatherSeries = {
    days: series.days,
    tempMinC: series.tempMinC.slice(),
    tempMaxC: series.tempMaxC.slice(),
    rainMm: series.rainMm.slice(),
    solarMJ: series.solarMJ.slice(),
  };
  const { known } = record;
  // a record may be a hundred years longer than the series
  const lastYear = firstYear + Math.ceil(series.days / climateYearDays);
  const end = Math.min(record.days, dayNumber(lastYear, 1, 1) - record.firstDay);
  for (let at = Math.max(0, seriesFirstDay - record.firstDay); at < end; at++) {
    const { year, month, day } = civilDate(record.firstDay + at);
    if (month === 2 && day === 29) continue;
    const into = (year - firstYear) * climateYearDays + climateDayOf(record.firstDay + at);
    if (into >= series.days) continue;
    const range = series.tempMaxC[into]! - series.tempMinC[into]!;
    if (known.tempMinC[at]) {
      joined.tempMinC[into] = record.tempMinC[at]!;
      joined.tempMaxC[into] = known.tempMaxC[at] ? record.tempMaxC[at]! : record.tempMinC[at]! + range;
    } else if (known.tempMaxC[at]) {
      joined.tempMaxC[into] = record.tempMaxC[at]!;
      joined.tempMinC[into] = record.tempMaxC[at]! - range;
    }
    if (known.rainMm[at]) joined.rainMm[into] = record.rainMm[at]!;
    if (known.solarMJ[at]) joined.solarMJ[into] = record.solarMJ[at]!;
  }
  return joined;
}
