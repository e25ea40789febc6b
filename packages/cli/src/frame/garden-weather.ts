import {
  type DailyRecord,
  type DayNumber,
  emptyRecord,
  type GardenWeather,
  parseDay,
  recordFields,
  recordOfGarden,
} from '@neckfall/engine';

/** What a garden keeps of a place's days up to one; days that were forecast by then count too. Null where there are none. */
export function weatherUntil(kept: GardenWeather, day: DayNumber): DailyRecord | null {
  const record = recordOfGarden(kept);
  const forecastFrom = kept.forecastFrom === null ? null : parseDay(kept.forecastFrom);
  if (forecastFrom !== null && forecastFrom <= day + 1) return record;
  const days = Math.min(record.days, day + 1 - record.firstDay);
  if (days <= 0) return null;
  const cut = emptyRecord(record.firstDay, days);
  fill(cut, record);
  return cut;
}

/** Both records in one; where both know a value, that of `over`. */
export function laidOver(under: DailyRecord, over: DailyRecord): DailyRecord {
  const firstDay = Math.min(under.firstDay, over.firstDay);
  const end = Math.max(under.firstDay + under.days, over.firstDay + over.days);
  const joined = emptyRecord(firstDay, end - firstDay);
  fill(joined, under);
  fill(joined, over);
  return joined;
}

function fill(into: DailyRecord, from: DailyRecord): void {
  for (const field of recordFields) {
    for (let at = 0; at < from.days; at++) {
      const to = from.firstDay + at - into.firstDay;
      if (from.known[field][at] !== 1 || to < 0 || to >= into.days) continue;
      into[field][to] = from[field][at];
      into.known[field][to] = 1;
    }
  }
}
