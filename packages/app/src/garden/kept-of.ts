import { type DayNumber, type Garden, parseDay, recordFields } from '@neckfall/engine';

/** How often a planting was looked at, and when last. */
export type KeptSeen = { count: number; lastDay: DayNumber };

export function seenByPlanting(observations: Garden['observations']): Map<string, KeptSeen> {
  const seen = new Map<string, KeptSeen>();
  for (const { plantingId, date } of observations) {
    const day = parseDay(date);
    if (plantingId === null || day === null) continue;
    const before = seen.get(plantingId);
    seen.set(plantingId, {
      count: (before?.count ?? 0) + 1,
      lastDay: Math.max(before?.lastDay ?? day, day),
    });
  }
  return seen;
}

/** The days that the weather of a place covers, both ends included, and those of them with anything measured. */
export type KeptWeather = { fromDay: DayNumber; toDay: DayNumber; measuredDays: number };

/** Forecast days are not counted: they have not come yet. */
export function weatherByPlace(weather: Garden['weather']): Map<string, KeptWeather> {
  const kept = new Map<string, KeptWeather>();
  for (const record of weather) {
    const { placeId, firstDate, forecastFrom } = record;
    const fromDay = parseDay(firstDate);
    if (placeId === null || fromDay === null) continue;
    const all = record.tempMinC.length;
    const forecastDay = forecastFrom === null ? null : parseDay(forecastFrom);
    const days = forecastDay === null ? all : Math.min(all, forecastDay - fromDay);
    let measuredDays = 0;
    for (let at = 0; at < days; at++)
      if (recordFields.some((field) => record[field][at] !== null)) measuredDays++;
    if (days > 0) kept.set(placeId, { fromDay, toDay: fromDay + days - 1, measuredDays });
  }
  return kept;
}
