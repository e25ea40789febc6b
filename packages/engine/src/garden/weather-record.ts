import { formatDay, parseDay } from '../calendar/index.ts';
import { type DailyRecord, emptyRecord, recordFields, usableRecord } from '../weather/index.ts';
import { type GardenWeather, mostWeatherDays, type WeatherSource } from './garden-weather.ts';

/**
 * What a garden keeps of a place, as a record to plan with; days that were forecast are in it too, and those of a file by
 * hand whose minimum is above their maximum are not known.
 */
export function recordOfGarden(weather: GardenWeather): DailyRecord {
  const days = weather.tempMinC.length;
  const record = emptyRecord(parseDay(weather.firstDate) ?? 0, days);
  for (const field of recordFields) {
    for (let at = 0; at < days; at++) {
      const value = weather[field][at] ?? null;
      if (value === null) continue;
      record[field][at] = value;
      record.known[field][at] = 1;
    }
  }
  return usableRecord(record);
}

/** Whose weather it is, and where it came from. */
export type GardenWeatherHead = {
  id: string;
  placeId: string | null;
  sources: WeatherSource[];
  /** Day number. */
  forecastFrom: number | null;
};

/**
 * A record as a garden keeps it: rounded to a hundredth, from the first day of which something is known to the last, of
 * these the latest {@link mostWeatherDays}. Null where nothing is known.
 */
export function gardenWeatherOf(record: DailyRecord, head: GardenWeatherHead): GardenWeather | null {
  const usable = usableRecord(record);
  const isKnown = (at: number) => recordFields.some((field) => usable.known[field][at] === 1);
  let end = usable.days;
  while (end > 0 && !isKnown(end - 1)) end--;
  if (end === 0) return null;
  let from = Math.max(0, end - mostWeatherDays);
  while (!isKnown(from)) from++;
  const column = (field: (typeof recordFields)[number]) =>
    Array.from({ length: end - from }, (_, at) =>
      usable.known[field][from + at] === 1 ? rounded(usable[field][from + at]!) : null,
    );
  const { forecastFrom } = head;
  return {
    id: head.id,
    placeId: head.placeId,
    firstDate: formatDay(usable.firstDay + from),
    tempMinC: column('tempMinC'),
    tempMaxC: column('tempMaxC'),
    rainMm: column('rainMm'),
    solarMJ: column('solarMJ'),
    forecastFrom:
      forecastFrom === null || forecastFrom >= usable.firstDay + end ? null : formatDay(forecastFrom),
    sources: head.sources,
  };
}

/** To a hundredth; no −0, which a file would not keep. */
function rounded(value: number): number {
  return Math.round(value * 100) / 100 + 0;
}
