import { believable } from '../believable.ts';
import type { DailyRecord, RecordField } from '../daily-record.ts';
import { daysOfReadings, type Readings } from './days-of-readings.ts';
import { type Flags, flag } from './flagged.ts';

/** Quantities that hourly files of services give, and the values of a day that come of each. */
export type Stamped = 'tempC' | 'rainMm' | 'solarMJ' | 'solarW';

/** Above this nothing shines on the ground, W m⁻² (the sun outside the air gives 1,361). */
const mostSolarW = 2000;
const limits: Record<Stamped, { low: number; high: number; field: RecordField }> = {
  tempC: { ...believable.tempMaxC, field: 'tempMaxC' },
  rainMm: { ...believable.rainMm, field: 'rainMm' },
  solarMJ: { ...believable.solarMJ, field: 'solarMJ' },
  // at night sensors show a little less than nothing
  solarW: { low: -50, high: mostSolarW, field: 'solarMJ' },
};

/** One quantity at every stamp; NaN where nothing stands. */
export type StampedValues = Partial<Record<Stamped, Float64Array>>;

/** Days of hourly values, of which those that can't be are left out and flagged. @param minute as {@link Readings} */
export function daysOfStamped(
  minute: Float64Array,
  values: StampedValues,
  flags: Flags,
): { record: DailyRecord; daysWithRow: number } {
  const believed = (quantity: Stamped) => {
    const { low, high, field } = limits[quantity];
    const taken = values[quantity]?.map((value, at) => {
      if (Number.isNaN(value) || (value >= low && value <= high)) return value;
      flag(flags, Math.floor(minute[at]! / 1440), field, value, 'out-of-range', true);
      return Number.NaN;
    });
    return taken ?? null;
  };
  const readings: Readings = {
    minute,
    tempC: believed('tempC'),
    tempMinC: null,
    tempMaxC: null,
    rainMm: believed('rainMm'),
    rainDayMm: null,
    rainSumMm: null,
    solarW: believed('solarW'),
    solarMJ: believed('solarMJ'),
  };
  return daysOfReadings(readings);
}
