import * as v from 'valibot';
import {
  dateRange,
  dayLengthClass,
  fullDate,
  head,
  onionType,
  positive,
  range,
  share,
  startMethod,
  verdict,
} from './schema-parts.ts';

const count = v.pipe(v.number(), v.integer(), v.minValue(0));

export const whichSchema = v.object({
  schema: v.literal('neckfall/which@1'),
  ...head,
  choices: v.array(
    v.object({
      /** Those that the years cannot tell apart share a rank. */
      rank: v.pipe(count, v.minValue(1)),
      /** How many others share it. */
      alike: count,
      cultivars: v.pipe(v.array(v.string()), v.minLength(1)),
      class: dayLengthClass,
      type: onionType,
      start: startMethod,
      date: fullDate,
      plantOut: v.nullable(dateRange),
      onset: dateRange,
      neckFall: dateRange,
      bulbDiameterMm: range,
      goodShare: share,
      outcome: verdict,
      gamble: v.boolean(),
      boltedPlantsShare: range,
      keepsMonths: v.pipe(v.array(positive), v.length(2)),
      keepsFrom: v.picklist(['cultivar', 'type']),
      why: v.pipe(v.string(), v.minLength(1)),
    }),
  ),
  ranking: v.pipe(v.string(), v.minLength(1)),
  considered: count,
});

export type WhichDocument = v.InferOutput<typeof whichSchema>;
