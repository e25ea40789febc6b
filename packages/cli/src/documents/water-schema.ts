import { wateringWays } from '@neckfall/engine';
import * as v from 'valibot';
import { planSchema } from './plan-schema.ts';
import { dateRange, fullDate, head, positive, range, share } from './schema-parts.ts';

const number = v.nullable(positive);

export const waterSchema = v.object({
  schema: v.literal('neckfall/water@1'),
  ...head,
  /** Of a garden file; null where the plan is of the command line. */
  planting: v.nullable(v.object({ id: v.string(), name: v.string() })),
  plan: planSchema,
  asOf: fullDate,
  /** As used; null where nothing was said. */
  bed: v.object({
    areaM2: number,
    watering: v.picklist(wateringWays),
    /** Share of the water let out that reaches the roots. */
    efficiency: share,
    flowLPerH: number,
    waterSaltDsPerM: number,
  }),
  /** Null before the crop is in its bed and once watering has ended. */
  today: v.nullable(
    v.object({
      /** Short of a full bed, and from where on onions feel it. */
      depletionMm: positive,
      readilyAvailableMm: positive,
      waterNow: v.boolean(),
      /** To let out to fill the bed. */
      litresPerM2: positive,
      litresForBed: number,
      minutes: number,
    }),
  ),
  /** The next day on which the bed asks for water, and the one after that when it was given. */
  next: dateRange,
  following: dateRange,
  /** First tops begin to fall: no more water. */
  stop: dateRange,
  /** From the start in the bed to the stop, litres a square metre; null where no onion comes to stand. */
  seasonMm: v.nullable(v.object({ need: range, rain: range, given: range })),
  /** Null where nothing was said of salt in the water. */
  salt: v.nullable(v.object({ yieldShare: share, leachingShare: share })),
  cautions: v.array(v.pipe(v.string(), v.minLength(1))),
  days: v.optional(
    v.array(
      v.object({
        date: fullDate,
        rainMm: positive,
        givenMm: positive,
        besideMm: positive,
        transpiredMm: positive,
        evaporatedMm: positive,
        drainedMm: positive,
        depletionMm: positive,
        readilyAvailableMm: positive,
      }),
    ),
  ),
});

export type WaterDocument = v.InferOutput<typeof waterSchema>;
