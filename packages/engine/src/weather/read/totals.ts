import { type DailyRecord, type RecordField, recordFields } from '../daily-record.ts';

/** What a record comes to, over the days that have the value. */
export type WeatherTotals = {
  /** Days that have it. */
  known: Record<RecordField, number>;
  /** Days of the calendar from the first to the last that lack it. */
  missing: Record<RecordField, number>;
  /** Arithmetic means, °C; null where no day has it. */
  meanTempMaxC: number | null;
  meanTempMinC: number | null;
  rainTotalMm: number | null;
  highestC: number | null;
  lowestC: number | null;
};

/** Sums and means of a record, over the days that are known. */
export function totalsOf(record: DailyRecord): WeatherTotals {
  const known = { tempMinC: 0, tempMaxC: 0, rainMm: 0, solarMJ: 0 };
  const sums = { ...known };
  let highestC = Number.NEGATIVE_INFINITY;
  let lowestC = Number.POSITIVE_INFINITY;
  for (const field of recordFields) {
    for (let at = 0; at < record.days; at++) {
      if (record.known[field][at] !== 1) continue;
      const value = record[field][at]!;
      known[field]++;
      sums[field] += value;
      if (field === 'tempMaxC') highestC = Math.max(highestC, value);
      if (field === 'tempMinC') lowestC = Math.min(lowestC, value);
    }
  }
  const missing = { ...known };
  for (const field of recordFields) missing[field] = record.days - known[field];
  const mean = (field: RecordField) => (known[field] === 0 ? null : sums[field] / known[field]);
  return {
    known,
    missing,
    meanTempMaxC: mean('tempMaxC'),
    meanTempMinC: mean('tempMinC'),
    rainTotalMm: known.rainMm === 0 ? null : sums.rainMm,
    highestC: known.tempMaxC === 0 ? null : highestC,
    lowestC: known.tempMinC === 0 ? null : lowestC,
  };
}
