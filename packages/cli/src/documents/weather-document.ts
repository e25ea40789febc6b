import { type DailyRecord, formatDay, type RecordField, type WeatherReading } from '@neckfall/engine';
import { version } from '../version.ts';
import { monthDay, round } from './values.ts';
import type { WeatherDocument } from './weather-schema.ts';

/** Sentences that go with a reading. */
export type WeatherSaid = { assumed: string[]; warnings: string[]; sources: string[] };

/**
 * What files were found to be, before any gap is filled.
 *
 * @param days whether each day is in it
 * @param forecastFrom day number from which on it is forecast, where a service was asked
 */
export function weatherDocument(
  reading: WeatherReading,
  said: WeatherSaid,
  days: boolean,
  forecastFrom?: number,
): WeatherDocument {
  const { files, record, totals, overlaps, typicalYear, daysWithRow } = reading;
  const dateOf = typicalYear ? monthDay : formatDay;
  const { missing } = totals;
  return {
    schema: 'neckfall/weather@1',
    engine: version,
    place: null,
    ...said,
    files: files.map(({ file, format, encoding, station, otherStations, ...found }) => ({
      file,
      format,
      encoding,
      station,
      otherStations,
      typicalYear: found.typicalYear,
      timeBase: found.timeBase,
      utcOffsetH: found.utcOffset?.offsetH ?? null,
      dateOrder: found.dateOrder,
      columns: found.columns.map(({ column, as, unit }) => ({ column, as, unit })),
      unused: found.unused,
      missingCodes: found.missingCodes,
    })),
    from: dateOf(record.firstDay),
    to: dateOf(record.firstDay + record.days - 1),
    ...(forecastFrom === undefined ? {} : { forecastFrom: formatDay(forecastFrom) }),
    calendarDays: record.days,
    daysWithRow,
    missing: { tempMaxC: missing.tempMaxC, tempMinC: missing.tempMinC, rainMm: missing.rainMm },
    means: { tempMaxC: rounded(totals.meanTempMaxC, 3), tempMinC: rounded(totals.meanTempMinC, 3) },
    rainTotalMm: rounded(totals.rainTotalMm, 2),
    extremes: { tempMaxC: rounded(totals.highestC, 2), tempMinC: rounded(totals.lowestC, 2) },
    flagged: files.flatMap(({ flagged }) =>
      flagged.map(({ day, field, value, why, leftOut }) => ({
        date: dateOf(day),
        field,
        value: round(value, 2),
        why,
        leftOut,
      })),
    ),
    flaggedCount: files.reduce((sum, { flaggedCount }) => sum + flaggedCount, 0),
    overlaps: overlaps.map(({ file, days, differing, largest }) => ({
      file,
      days,
      differing,
      largest: {
        tempMinC: round(largest.tempMinC, 2),
        tempMaxC: round(largest.tempMaxC, 2),
        rainMm: round(largest.rainMm, 2),
        solarMJ: round(largest.solarMJ, 2),
      },
    })),
    ...(days ? { days: weatherDays(record, dateOf) } : {}),
  };
}

/** A row a day of the calendar; null where nothing was measured. */
export function weatherDays(record: DailyRecord, dateOf: (day: number) => string) {
  const value = (field: RecordField, at: number) =>
    record.known[field][at] === 1 ? round(record[field][at], 2) : null;
  return Array.from({ length: record.days }, (_, at) => ({
    date: dateOf(record.firstDay + at),
    tempMaxC: value('tempMaxC', at),
    tempMinC: value('tempMinC', at),
    rainMm: value('rainMm', at),
  }));
}

function rounded(value: number | null, digits: number): number | null {
  return value === null ? null : round(value, digits);
}
