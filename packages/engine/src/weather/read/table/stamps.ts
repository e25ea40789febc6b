import type { FoundFile, WeatherCorrections } from '../found.ts';
import type { Spacing } from './choose-columns.ts';
import type { TableProfile } from './profile.ts';
import type { Rows } from './read-rows.ts';

/** Whether rows are days: hardly any day has more than one. */
export function spacingOf({ day, minute }: Rows): Spacing {
  let days = 0;
  for (let at = 0; at < day.length; at++) if (at === 0 || day[at] !== day[at - 1]) days++;
  return day.length < 1.5 * days || minute.every(Number.isNaN) ? 'days' : 'readings';
}

/** Median of the steps between days; more than a day or two for tables of weeks and months. */
export function medianDays(day: Float64Array): number {
  const steps = new Float64Array(Math.max(0, day.length - 1));
  for (let at = 1; at < day.length; at++) steps[at - 1] = Math.abs(day[at]! - day[at - 1]!);
  return steps.sort()[Math.floor(steps.length / 2)] ?? 1;
}

/** Where the standard time of the place is taken from. */
export type StandardTime = { offsetH: number; from: 'correction' | 'place' | 'longitude' | 'file' };

/** @param isAskedOnly whether it is left open rather than guessed */
export function standardTime(
  corrections: WeatherCorrections,
  placeOffsetH: number | null,
  longitudeDeg: number | null,
  rows: Rows,
  isAskedOnly: boolean,
): StandardTime | null {
  if (corrections.utcOffsetH !== null) return { offsetH: corrections.utcOffsetH, from: 'correction' };
  if (placeOffsetH !== null) return { offsetH: placeOffsetH, from: 'place' };
  if (isAskedOnly) return null;
  // clocks are put forward in summer: the least is that of standard time
  let least = Number.POSITIVE_INFINITY;
  for (const offset of rows.offset) if (offset < least) least = offset;
  if (least !== 0 && Number.isFinite(least)) return { offsetH: least / 60, from: 'file' };
  return longitudeDeg === null ? null : { offsetH: Math.round(longitudeDeg / 15), from: 'longitude' };
}

/** Minutes since 1970 of each row: of standard time where the row tells its offset, else as printed. */
export function minutesOf({ day, minute, offset }: Rows, standard: StandardTime | null): Float64Array {
  return day.map((number, at) => {
    // the last hour of a day is its own, not the first of the next
    const clock = minute[at]! >= 1440 ? 1439 : minute[at]! || 0;
    const shift = standard === null || Number.isNaN(offset[at]!) ? 0 : standard.offsetH * 60 - offset[at]!;
    return number * 1440 + clock + shift;
  });
}

/** Days of rows that are days: a stamp in UTC late in the day is the midnight of the next. */
export function dayOfRows({ day, minute, offset }: Rows): Float64Array {
  return day.map((number, at) =>
    offset[at] === 0 && minute[at]! >= 12 * 60 && minute[at]! < 1439 ? number + 1 : number,
  );
}

/** Gives stamps the offset from UTC that the format says where they don't. */
export function tellOffsets(rows: Rows, { timeBase, fileOffsetMinutes }: TableProfile): void {
  const { offset, day, minute } = rows;
  if (fileOffsetMinutes !== undefined) {
    for (let at = 0; at < offset.length; at++) {
      if (offset[at] === 0) {
        // seconds since 1970 are of UTC: made times of the file first, as its other stamps are
        const local = day[at]! * 1440 + minute[at]! + fileOffsetMinutes;
        day[at] = Math.floor(local / 1440);
        minute[at] = local - day[at]! * 1440;
      }
      offset[at] = fileOffsetMinutes;
    }
  } else if (timeBase === 'local-standard') offset.fill(Number.NaN);
  else if (timeBase === 'utc') for (let at = 0; at < offset.length; at++) offset[at] ||= 0;
}

/** What the days are counted in. @param isUtc whether readings tell their offset */
export function timeBaseOf(
  isUtc: boolean,
  standard: StandardTime | null,
  { offset }: Rows,
  { timeBase, fileOffsetMinutes }: TableProfile,
): FoundFile['timeBase'] {
  if (fileOffsetMinutes !== undefined)
    return standard === null ? (fileOffsetMinutes === 0 ? 'utc' : 'as-printed') : 'local-standard';
  if (!isUtc) return timeBase === 'utc' ? 'as-printed' : timeBase;
  return offset.every((minutes) => minutes === 0) ? 'utc' : 'local-standard';
}
