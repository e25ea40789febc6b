import { type DailyRecord, type GardenWeather, recordFields, weatherMet } from '@neckfall/engine';
import type { WeatherMet } from '../worker/site.ts';

/** The weather that crops started till today have met, for the worker; null: none is known. */
export function weatherAsked(kept: GardenWeather, today: number): WeatherMet | null {
  const record = weatherMet(kept, today);
  return record && { key: markOf(record), record, lastStart: today };
}

/** A mark of the values, like no other's for as long as anyone will look (FNV-1a, 32 bits, over their hundredths). */
function markOf({ firstDay, days, known, ...values }: DailyRecord): string {
  let mark = 0x811c9dc5;
  for (const field of recordFields) {
    for (let at = 0; at < days; at++) {
      const hundredths = known[field][at] === 1 ? Math.round(values[field][at]! * 100) : 0x7fffffff;
      mark = Math.imul(mark ^ hundredths, 0x01000193);
    }
  }
  return `${firstDay} ${days} ${mark >>> 0}`;
}
