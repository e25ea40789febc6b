import * as v from 'valibot';
import { dayLengthClass, fullDate, onionType, positive, startMethod, verdict } from './schema-parts.ts';

const degrees = v.pipe(v.number(), v.minValue(-180), v.maxValue(180));
const sentence = v.pipe(v.string(), v.minLength(1));

const row = {
  class: dayLengthClass,
  type: onionType,
  start: startMethod,
  startDate: fullDate,
  goodYearsInTen: v.pipe(v.number(), v.minValue(0), v.maxValue(10)),
  outcome: verdict,
  gamble: v.boolean(),
  neckFall: v.nullable(fullDate),
  bulbDiameterMm: v.nullable(positive),
  isAtHome: v.boolean(),
};

/** GeoJSON (RFC 7946) with members of our own before its features. */
export const atlasSchema = v.object({
  type: v.literal('FeatureCollection'),
  schema: v.literal('neckfall/atlas@1'),
  engine: v.pipe(v.string(), v.regex(/^\d+\.\d+\.\d+/)),
  region: v.string(),
  country: v.nullable(v.pipe(v.string(), v.length(2))),
  stepDeg: positive,
  class: v.nullable(dayLengthClass),
  start: v.nullable(startMethod),
  from: fullDate,
  years: v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(200)),
  seed: v.pipe(v.number(), v.integer()),
  assumed: v.array(sentence),
  warnings: v.array(sentence),
  sources: v.array(sentence),
  /** West, south, east, north. */
  bbox: v.pipe(v.array(degrees), v.length(4)),
  features: v.array(
    v.object({
      type: v.literal('Feature'),
      /** Longitude, latitude. */
      geometry: v.object({ type: v.literal('Point'), coordinates: v.pipe(v.array(degrees), v.length(2)) }),
      properties: v.object({
        elevationM: v.number(),
        ...row,
        entries: v.optional(v.array(v.object(row))),
      }),
    }),
  ),
});

export type AtlasDocument = v.InferOutput<typeof atlasSchema>;
