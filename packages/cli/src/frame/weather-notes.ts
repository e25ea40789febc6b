import {
  checkWeather,
  type DailyRecord,
  heavyRainMm,
  measuredDays,
  recordFields,
  type WeatherFinding,
  type WeatherReading,
} from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import type { WeatherFile } from '../files/weather-file.ts';
import { refuse } from '../refusal/refusal.ts';
import type { Frame } from './frame.ts';
import { readingWarnings } from './reading-warnings.ts';

/** No season lasts longer, in days. */
const longestSeason = 550;

/** From when to when a record holds, what was forecast of it apart. */
export function weatherAssumptions(
  { path, record, forecastFrom }: WeatherFile,
  { say, dayWithYear }: Speaker,
): string[] {
  const end = record.firstDay + record.days;
  const ahead = Math.max(record.firstDay, forecastFrom ?? end);
  const told = (key: 'assumed.weather' | 'record.forecast', from: number, to: number) =>
    from > to ? [] : [say(key, { file: path, from: dayWithYear(from), to: dayWithYear(to) })];
  return [...told('assumed.weather', record.firstDay, ahead - 1), ...told('record.forecast', ahead, end - 1)];
}

/** What is doubtful in a record; one that can't be of the place is refused with exit code 3. `label` names the place. */
export function recordWarnings(
  { named, record, reading }: WeatherFile,
  latitudeDeg: number,
  label: string,
  speaker: Speaker,
): string[] {
  const { impossible, findings } = checkWeather(record, latitudeDeg);
  if (impossible !== null) {
    const field = reading ? '--weather' : 'GARDEN';
    throw refuse(`weather-${impossible}`, { field, exit: 3, values: { value: named, place: label } });
  }
  return [
    ...(reading
      ? [...readingWarnings(reading, '--weather', speaker), ...leftOutWarning(reading, named, speaker)]
      : []),
    ...findings.map((finding) => findingSentence(finding, named, speaker)),
  ];
}

/** The `weather` command names them one by one. */
function leftOutWarning({ files }: WeatherReading, file: string, { say }: Speaker): string[] {
  const isAny = files.some(({ flagged }) => flagged.some(({ leftOut }) => leftOut));
  const count = files.reduce((sum, { flaggedCount }) => sum + flaggedCount, 0);
  return isAny ? [say('record.left-out', { file, count })] : [];
}

function findingSentence(
  finding: WeatherFinding,
  file: string,
  { say, dayWithYear, number }: Speaker,
): string {
  switch (finding.code) {
    case 'stuck':
      return say('record.stuck', { file, days: finding.days, date: dayWithYear(finding.firstDay) });
    case 'sun-beyond-sky':
      return say('record.sun-beyond-sky', { file, days: finding.days });
    case 'sun-weak':
      return say('record.sun-weak', { file, percent: number(100 * finding.share) });
    case 'rain-heavy':
      return say('record.rain-heavy', { file, days: finding.days, limit: heavyRainMm, most: finding.mostMm });
  }
}

/** Where no tops fall, the season told of is half a year, days. */
const seasonWithoutFall = 182;
/** Below this share of measured days the answer is warned of. */
const enoughMeasured = 0.9;

/** How much of a season is measured, from its start to the usual fall of its tops; null: they do not fall. */
export function measuredNotes(
  { options, speaker }: Frame,
  from: number,
  neckFall: number | null,
): { assumed: string[]; warnings: string[] } {
  const { weather } = options;
  if (!weather) return { assumed: [], warnings: [] };
  const { say, dayWithYear } = speaker;
  const to = neckFall === null ? from + seasonWithoutFall : Math.round(neckFall);
  const days = to - from + 1;
  const ahead = weather.forecastFrom ?? to + 1;
  const known = measuredDays(weather.record, from, Math.min(to, ahead - 1));
  const forecast = measuredDays(weather.record, Math.max(from, ahead), to);
  const values = {
    known,
    days,
    forecast,
    others: days - known - forecast,
    from: dayWithYear(from),
    to: dayWithYear(to),
  };
  const isFew = known > 0 && known < enoughMeasured * days;
  return {
    assumed: [say('record.measured', values)],
    warnings: isFew ? [say('record.few', { ...values, file: weather.named })] : [],
  };
}

/**
 * A warning where a record that was given has no day of seasons started from `firstStart` to `lastStart`; what a garden
 * keeps need not be of every season.
 */
export function weatherWarnings({ options, speaker }: Frame, firstStart: number, lastStart: number) {
  const { weather } = options;
  if (!weather?.reading || knowsDay(weather.record, firstStart, lastStart + longestSeason)) return [];
  return [speaker.say('warning.weather-unused', { file: weather.named })];
}

function knowsDay(record: DailyRecord, from: number, to: number): boolean {
  const first = Math.max(0, from - record.firstDay);
  const last = Math.min(record.days - 1, to - record.firstDay);
  for (let at = first; at <= last; at++)
    if (recordFields.some((field) => record.known[field][at])) return true;
  return false;
}
