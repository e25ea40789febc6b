import { type DailyRecord, recordFields } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import type { WeatherFile } from '../files/weather-file.ts';
import type { Frame } from './frame.ts';

/** No season lasts longer, in days. */
const longestSeason = 550;

export function weatherAssumption({ path, record }: WeatherFile, { say, dayWithYear }: Speaker): string {
  return say('assumed.weather', {
    file: path,
    from: dayWithYear(record.firstDay),
    to: dayWithYear(record.firstDay + record.days - 1),
  });
}

/** A warning where the record has no day of seasons started from `firstStart` to `lastStart`. */
export function weatherWarnings({ options, speaker }: Frame, firstStart: number, lastStart: number) {
  const { weather } = options;
  if (!weather || knowsDay(weather.record, firstStart, lastStart + longestSeason)) return [];
  return [speaker.say('warning.weather-unused', { file: weather.path })];
}

function knowsDay(record: DailyRecord, from: number, to: number): boolean {
  const first = Math.max(0, from - record.firstDay);
  const last = Math.min(record.days - 1, to - record.firstDay);
  for (let at = first; at <= last; at++)
    if (recordFields.some((field) => record.known[field][at])) return true;
  return false;
}
