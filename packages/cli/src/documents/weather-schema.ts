import { recordFields, weatherFormats, weatherQuantities } from '@neckfall/engine';
import * as v from 'valibot';
import { fullDate, head, monthDay, positive } from './schema-parts.ts';

const number = v.nullable(v.number());
const count = v.pipe(v.number(), v.integer(), v.minValue(0));
/** Of typical years MM-DD. */
const date = v.union([fullDate, monthDay]);

export const weatherSchema = v.object({
  schema: v.literal('neckfall/weather@1'),
  engine: head.engine,
  place: v.null(),
  assumed: head.assumed,
  warnings: head.warnings,
  sources: head.sources,
  files: v.array(
    v.object({
      file: v.string(),
      format: v.picklist(weatherFormats),
      encoding: v.string(),
      station: v.nullable(
        v.object({
          name: v.nullable(v.string()),
          latitudeDeg: number,
          longitudeDeg: number,
          elevationM: number,
        }),
      ),
      /** Other stations in the file, which were left out. */
      otherStations: v.array(v.string()),
      typicalYear: v.boolean(),
      timeBase: v.picklist(['local-standard', 'utc', 'as-printed']),
      /** Hours from UTC of the standard time that its days are made of, where it was moved to it. */
      utcOffsetH: number,
      /** Order of day, month and year where the dates left it open. */
      dateOrder: v.nullable(v.picklist(['ymd', 'dmy', 'mdy'])),
      columns: v.array(
        v.object({ column: v.string(), as: v.picklist(weatherQuantities), unit: v.nullable(v.string()) }),
      ),
      unused: v.array(v.string()),
      /** Numbers that stood for “not measured”. */
      missingCodes: v.array(v.object({ column: v.string(), code: v.number(), days: count })),
    }),
  ),
  from: date,
  to: date,
  /** With --ask: days from here on are a forecast. */
  forecastFrom: v.optional(fullDate),
  calendarDays: count,
  daysWithRow: count,
  /** Days of the calendar from the first to the last that lack it. */
  missing: v.object({ tempMaxC: count, tempMinC: count, rainMm: count }),
  /** Over the days that have it. */
  means: v.object({ tempMaxC: number, tempMinC: number }),
  rainTotalMm: v.nullable(positive),
  /** The highest of the highest, the lowest of the lowest. */
  extremes: v.object({ tempMaxC: number, tempMinC: number }),
  /** The first hundred of each file. */
  flagged: v.array(
    v.object({
      date,
      field: v.picklist(recordFields),
      value: v.number(),
      why: v.picklist(['quality-flag', 'out-of-range', 'min-above-max', 'outlier', 'accumulated', 'stuck']),
      /** Else it stands, and is doubtful. */
      leftOut: v.boolean(),
    }),
  ),
  flaggedCount: count,
  /** Files that give other values than those before them for the same days; theirs stand. */
  overlaps: v.array(
    v.object({
      file: v.string(),
      days: count,
      differing: count,
      largest: v.object({ tempMinC: positive, tempMaxC: positive, rainMm: positive, solarMJ: positive }),
    }),
  ),
  /** With --days. */
  days: v.optional(v.array(v.object({ date, tempMaxC: number, tempMinC: number, rainMm: number }))),
});

export type WeatherDocument = v.InferOutput<typeof weatherSchema>;
