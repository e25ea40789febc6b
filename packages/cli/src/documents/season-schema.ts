import * as v from 'valibot';
import { planSchema } from './plan-schema.ts';
import {
  dateRange,
  fullDate,
  head,
  onsetRange,
  positive,
  range,
  seasonShares,
  share,
  verdict,
} from './schema-parts.ts';

/** Width of the middle 8 seasons in 10: as answered, by the weather of the years alone, by what is not known of the kind alone. */
const span = v.nullable(v.object({ all: positive, weather: positive, kind: positive }));

const count = v.pipe(v.number(), v.integer(), v.minValue(0));

export const seasonSchema = v.object({
  schema: v.literal('neckfall/season@1'),
  ...head,
  plan: planSchema,
  emergence: dateRange,
  plantOut: v.nullable(dateRange),
  onset: onsetRange,
  neckFall: dateRange,
  leavesMadeAtOnset: range,
  leavesGreenAtOnset: range,
  shootGAtOnset: range,
  bulbMassG: range,
  bulbDiameterMm: range,
  plantSpreadCv: positive,
  totalKgM2: range,
  marketableKgM2: range,
  boltedPlantsShare: range,
  winterKilledPlantsShare: range,
  emergedShare: share,
  thirstyDays: range,
  seasonShares,
  outcome: verdict,
  gamble: v.boolean(),
  spans: v.object({ neckFallDays: span, bulbDiameterMm: span }),
  /** Three weeks before onset; null where bulbs seldom start or start too soon. */
  leafCheckpoint: v.nullable(
    v.object({
      date: fullDate,
      leavesGreen: range,
      /** Leaves up to which most seasons end small, and the median bulb on either side; null where leaves don't tell. */
      smallUpToLeaves: v.nullable(v.pipe(v.number(), v.integer(), v.minValue(0))),
      goodDiameterMm: v.nullable(positive),
      smallDiameterMm: v.nullable(positive),
    }),
  ),
  reason: v.string(),
  /** Of a planting of a garden file: the day up to which what was seen is taken into account. */
  asOf: v.optional(fullDate),
  /** Observations that told something. */
  observations: v.optional(count),
  /** How many equally likely seasons the answer is worth. */
  effectiveDraws: v.optional(count),
  learnt: v.optional(
    v.array(
      v.object({
        parameter: v.picklist([
          'day-length-needed-h',
          'ripening-factor',
          'leaf-pace-factor',
          'growth-factor',
        ]),
        usual: v.number(),
        now: v.number(),
        sd: positive,
        /** What it alone does to the day tops go over; null where they mostly don't. */
        neckFallDays: v.nullable(v.number()),
        /** Null within what is not known of it. */
        sentence: v.pipe(v.string(), v.minLength(1)),
      }),
    ),
  ),
  /** By the last leaf count; null where none was made. */
  standing: v.optional(
    v.nullable(
      v.object({
        date: fullDate,
        leavesExpected: range,
        leavesSeen: positive,
        /** Ahead where negative; null where leaves no longer tell. */
        daysBehind: v.nullable(v.pipe(v.number(), v.integer())),
      }),
    ),
  ),
  days: v.optional(
    v.array(
      v.object({
        date: fullDate,
        sunUpH: v.number(),
        photoperiodH: v.number(),
        tempMeanC: v.number(),
        leavesMade: v.number(),
        leavesGreen: v.number(),
        shootG: v.number(),
        bulbG: v.number(),
        bulbing: v.number(),
        ripening: v.number(),
      }),
    ),
  ),
});

export type SeasonDocument = v.InferOutput<typeof seasonSchema>;
