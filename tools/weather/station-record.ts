import { climateDayOf, dayNumber } from '../../packages/engine/src/calendar/index.ts';
import { type DailyRecord, emptyRecord, type RecordField } from '../../packages/engine/src/weather/index.ts';

/** A daily record and the place it was kept at. */
export type StationRecord = {
  name: string;
  source: string;
  latitudeDeg: number;
  longitudeDeg: number;
  elevationM: number;
  record: DailyRecord;
  /** Sunshine hours a day where the record has them; NaN elsewhere. */
  sunshineHours?: Float64Array;
};

export type DayValues = { day: number } & Partial<Record<RecordField | 'sunshineHours', number>>;

/** Puts loose days in order; values that are not finite stay unknown. */
export function recordFromDays(days: DayValues[]): { record: DailyRecord; sunshineHours: Float64Array } {
  const numbers = days.map(({ day }) => day);
  const first = numbers.reduce((a, b) => Math.min(a, b));
  const last = numbers.reduce((a, b) => Math.max(a, b));
  const record = emptyRecord(first, last - first + 1);
  const sunshineHours = new Float64Array(record.days).fill(Number.NaN);
  for (const { day, sunshineHours: sun, ...values } of days) {
    if (sun !== undefined) sunshineHours[day - first] = sun;
    for (const [field, value] of Object.entries(values) as [RecordField, number][]) {
      if (!Number.isFinite(value)) continue;
      record[field][day - first] = value;
      record.known[field][day - first] = 1;
    }
  }
  return { record, sunshineHours };
}

/** The days of a record from 1 January of one year to 31 December of another, unknown where it has none. */
export function yearsOf(record: DailyRecord, firstYear: number, lastYear: number): DailyRecord {
  const first = dayNumber(firstYear, 1, 1);
  const part = emptyRecord(first, dayNumber(lastYear + 1, 1, 1) - first);
  for (let at = 0; at < part.days; at++) {
    const from = first + at - record.firstDay;
    if (from < 0 || from >= record.days) continue;
    for (const field of ['tempMinC', 'tempMaxC', 'rainMm', 'solarMJ'] as const) {
      part[field][at] = record[field][from]!;
      part.known[field][at] = record.known[field][from]!;
    }
  }
  return part;
}

/** Climate day of each day of a record; −1 on 29 February, which statistics pass over. */
export function climateDaysOf(record: DailyRecord): Int16Array {
  return Int16Array.from({ length: record.days }, (_, at) => {
    const day = climateDayOf(record.firstDay + at);
    return at > 0 && day === climateDayOf(record.firstDay + at - 1) ? -1 : day;
  });
}
