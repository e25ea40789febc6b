import { type DailyRecord, emptyRecord, type RecordField } from '../../daily-record.ts';
import { daysOfReadings } from '../days-of-readings.ts';
import type { WeatherQuantity } from '../found.ts';

/** Values of each quantity that was chosen, in its own unit. */
export type Chosen = ReadonlyMap<WeatherQuantity, Float64Array>;

/** Mean power of a day, W m⁻², as its energy, MJ m⁻². */
const dayOfWatts = 0.0864;

/** The record of rows that are days. Of two rows of a day the first one's values stand. */
export function recordOfDays(
  day: Float64Array,
  chosen: Chosen,
): { record: DailyRecord; daysWithRow: number } {
  let first = Number.POSITIVE_INFINITY;
  let last = Number.NEGATIVE_INFINITY;
  for (const number of day) {
    first = Math.min(first, number);
    last = Math.max(last, number);
  }
  const record = emptyRecord(first, last - first + 1);
  const put = (field: RecordField, values: Float64Array | undefined, times = 1) => {
    if (values === undefined) return;
    for (let row = 0; row < day.length; row++) {
      const at = day[row]! - first;
      if (Number.isNaN(values[row]!) || record.known[field][at] === 1) continue;
      record[field][at] = values[row]! * times;
      record.known[field][at] = 1;
    }
  };
  put('tempMinC', chosen.get('tempMinC') ?? chosen.get('tempC'));
  put('tempMaxC', chosen.get('tempMaxC') ?? chosen.get('tempC'));
  put('rainMm', chosen.get('rainMm') ?? chosen.get('rainDayMm'));
  const counter = chosen.get('rainSumMm');
  if (counter !== undefined) put('rainMm', risesByDay(day, counter));
  put('solarMJ', chosen.get('solarMJ'));
  put('solarMJ', chosen.get('solarW'), dayOfWatts);
  return { record, daysWithRow: new Set(day).size };
}

/** What a counter rose by since the day before; unknown where that day is. */
function risesByDay(day: Float64Array, counter: Float64Array): Float64Array {
  const shown = new Map<number, number>();
  for (let row = 0; row < day.length; row++) {
    if (!Number.isNaN(counter[row]!)) shown.set(day[row]!, counter[row]!);
  }
  return counter.map((value, row) => {
    const before = shown.get(day[row]! - 1);
    if (before === undefined) return Number.NaN;
    return value < before / 2 ? value : Math.max(0, value - before);
  });
}

/** The record of rows that are readings within days. @param minute as in {@link daysOfReadings} */
export function recordOfReadings(
  minute: Float64Array,
  chosen: Chosen,
): { record: DailyRecord; daysWithRow: number } {
  const of = (as: WeatherQuantity) => chosen.get(as) ?? null;
  return daysOfReadings({
    minute,
    tempC: of('tempC'),
    tempMinC: of('tempMinC'),
    tempMaxC: of('tempMaxC'),
    rainMm: of('rainMm'),
    rainDayMm: of('rainDayMm'),
    rainSumMm: of('rainSumMm'),
    solarW: of('solarW'),
    solarMJ: of('solarMJ'),
  });
}
