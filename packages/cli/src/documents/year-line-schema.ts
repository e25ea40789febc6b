import * as v from 'valibot';
import { planSchema } from './plan-schema.ts';
import { dayLengthClass, fullDate, head, positive, share, startMethod } from './schema-parts.ts';

const hours = v.pipe(v.number(), v.minValue(0), v.maxValue(24));
const count = v.pipe(v.number(), v.integer(), v.minValue(0));

/** What a year line is drawn from, day by day from `firstDay` on; a picture anywhere can be made of it. */
export const yearLineSchema = v.object({
  schema: v.literal('neckfall/year-line@1'),
  ...head,
  made: fullDate,
  weather: v.picklist(['drawn', 'some']),
  class: dayLengthClass,
  needSunUpH: hours,
  firstDay: fullDate,
  sunUpH: v.array(hours),
  rainMm: v.array(positive),
  frostShare: v.array(share),
  highC: v.array(v.number()),
  months: v.pipe(
    v.array(
      v.object({
        month: v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(12)),
        sunUpH: hours,
        rainMm: positive,
        frostNights: positive,
        highC: v.number(),
      }),
    ),
    v.length(12),
  ),
  plan: v.nullable(planSchema),
  crop: v.nullable(
    v.object({
      start: startMethod,
      leaves: v.array(v.object({ date: fullDate, made: count })),
      leavesMade: v.nullable(v.object({ date: fullDate, count })),
      bulb: v.array(v.object({ date: fullDate, acrossMm: positive })),
      topsOver: v.nullable(fullDate),
      marks: v.array(
        v.object({
          kind: v.picklist(['start', 'out', 'long', 'big', 'ready', 'bulbs', 'tops']),
          date: fullDate,
          from: v.nullable(fullDate),
          to: v.nullable(fullDate),
        }),
      ),
    }),
  ),
});

export type YearLineDocument = v.InferOutput<typeof yearLineSchema>;
