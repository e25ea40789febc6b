import * as v from 'valibot';
import {
  dayLengthClass,
  fullDate,
  head,
  monthDay,
  monthDayRange,
  positive,
  startMethod,
  verdict,
} from './schema-parts.ts';

const percent = v.pipe(v.number(), v.minValue(0), v.maxValue(100));
const hours = v.pipe(v.number(), v.minValue(0), v.maxValue(24));
const hoursByDay = v.pipe(v.array(hours), v.length(365));

export const whereSchema = v.object({
  schema: v.literal('neckfall/where@1'),
  ...head,
  climate: v.object({
    source: v.literal('built-in'),
    nearestNodeKm: positive,
    warmerC: v.number(),
    months: v.pipe(
      v.array(
        v.object({
          month: v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(12)),
          tempMeanC: v.number(),
          tempMinC: v.number(),
          tempMaxC: v.number(),
          rainMmPerMonth: positive,
          wetDays: positive,
          relativeHumidityPct: percent,
          sunshinePct: percent,
          wind10mMs: positive,
          frostNights: positive,
          referenceEtMmPerDay: v.number(),
        }),
      ),
      v.length(12),
    ),
  }),
  daylight: v.object({
    year: v.pipe(v.number(), v.integer()),
    convention: v.literal('sun-up'),
    longestH: hours,
    shortestH: hours,
    hoursByDay,
    photoperiodByDay: hoursByDay,
  }),
  frost: v.object({
    lastSpring: monthDayRange,
    firstAutumn: monthDayRange,
    frostFreeDays: v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(365)),
    meanAnnualMinimumC: v.number(),
  }),
  today: v.object({
    date: fullDate,
    sentence: v.string(),
    starts: v.array(
      v.object({
        start: startMethod,
        class: dayLengthClass,
        stillGoodUntil: v.nullable(fullDate),
        verdict,
        nextFrom: v.nullable(fullDate),
      }),
    ),
  }),
  classes: v.array(
    v.object({
      class: dayLengthClass,
      verdict,
      gamble: v.boolean(),
      bestStart: startMethod,
      bestDate: monthDay,
      onset: v.nullable(monthDay),
      neckFall: v.nullable(monthDay),
      reason: v.string(),
    }),
  ),
});

export type WhereDocument = v.InferOutput<typeof whereSchema>;
