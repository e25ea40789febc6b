import { climateDayOf } from '../calendar/index.ts';
import type { DailyRecord } from './daily-record.ts';
import type { WeatherSeries } from './weather-series.ts';

/** Measured days beside what is usual on the same days of the year. */
export type AgainstUsual = {
  /** Days with both temperatures, and how much warmer their mean of the two was than usual, °C; null: no such day. */
  tempDays: number;
  warmerC: number | null;
  /** Days with rain known, what fell on them, and what falls on such days, mm. */
  rainDays: number;
  rainMm: number;
  usualRainMm: number;
};

/**
 * How the days of a record were for the place: a station in another climate shows here.
 *
 * @param usual one year of mean climate; see {@link meanYear}
 * @param days of the record, from its first on; all unless fewer are meant
 */
export function againstUsual(record: DailyRecord, usual: WeatherSeries, days = record.days): AgainstUsual {
  const { tempMinC, tempMaxC, rainMm, known, firstDay } = record;
  const found = { tempDays: 0, warmerC: null, rainDays: 0, rainMm: 0, usualRainMm: 0 };
  let sumC = 0;
  for (let at = 0; at < Math.min(days, record.days); at++) {
    const day = climateDayOf(firstDay + at);
    if (known.tempMinC[at] === 1 && known.tempMaxC[at] === 1) {
      found.tempDays++;
      sumC += (tempMinC[at]! + tempMaxC[at]! - usual.tempMinC[day]! - usual.tempMaxC[day]!) / 2;
    }
    if (known.rainMm[at] === 1) {
      found.rainDays++;
      found.rainMm += rainMm[at]!;
      found.usualRainMm += usual.rainMm[day]!;
    }
  }
  return found.tempDays === 0 ? found : { ...found, warmerC: sumC / found.tempDays };
}
