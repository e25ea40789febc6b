import { dryingPlaces, likes, seedAges, storePlaces } from '@neckfall/engine';
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
} from './schema-parts.ts';

const count = v.pipe(v.number(), v.integer(), v.minValue(0));
const sentence = v.pipe(v.string(), v.minLength(1));
const like = v.picklist(likes);
const kilograms = v.object({ p10: positive, p50: positive, p90: positive });
const relative = v.pipe(v.number(), v.minValue(0), v.maxValue(100));
/** Place in the list of lots. */
const lotIndex = count;

export const keepSchema = v.object({
  schema: v.literal('neckfall/keep@1'),
  ...head,
  today: fullDate,
  /** As used. */
  household: v.object({
    people: positive,
    /** Of all its people together. */
    gramsPerWeek: positive,
    gramsFrom: v.picklist(['given', 'usual']),
    /** Null where its own air was given. */
    store: v.nullable(v.picklist(storePlaces)),
    /** Readings of its air that the garden holds. */
    storeReadings: count,
    likes: v.array(like),
    /** Null where it was not said. */
    seedAge: v.nullable(v.picklist(seedAges)),
  }),
  /** Means of the store by month. */
  storeClimate: v.pipe(
    v.array(
      v.object({
        month: v.pipe(count, v.minValue(1), v.maxValue(12)),
        tempC: v.number(),
        relativeHumidityPct: relative,
      }),
    ),
    v.length(12),
  ),
  answer: sentence,
  lots: v.array(
    v.object({
      class: dayLengthClass,
      type: onionType,
      /** Names under which the kind is sold. */
      cultivars: v.pipe(v.array(v.string()), v.minLength(1)),
      start: startMethod,
      date: fullDate,
      plantOut: v.nullable(dateRange),
      likes: v.array(like),
      keepsMonths: v.pipe(v.array(positive), v.length(2)),
      bedM2: positive,
      rowM: positive,
      plants: count,
      /** Null where this way of starting asks for none. */
      seeds: v.nullable(count),
      sets: v.nullable(count),
      bundles: v.nullable(count),
      trayCells: v.nullable(count),
      compostL: v.nullable(positive),
      ready: dateRange,
      lastsUntil: dateRange,
    }),
  ),
  bedM2: positive,
  months: v.array(
    v.object({
      month: v.pipe(v.string(), v.regex(/^\d{4}-\d{2}$/)),
      needKg: positive,
      /** At its end, all lots together. */
      storeKg: kilograms,
      /** The middle of each lot, in their order. */
      lotsKg: v.array(positive),
      lostKg: positive,
      /** Lots that are eaten from in most years. */
      from: v.array(lotIndex),
      suppliedShare: share,
    }),
  ),
  suppliedYearsShare: share,
  gaps: v.array(
    v.object({
      from: fullDate,
      to: fullDate,
      closedBy: v.array(v.picklist(['overwintered', 'green-onions', 'shallots', 'bought'])),
    }),
  ),
  unmetLikes: v.array(like),
  /** How the store loses onions against the usual (1), as looks at it have taught; null without a look. */
  taught: v.nullable(v.object({ looks: count, sproutingPace: positive, rottingPace: positive })),
  /** Plantings of the garden that were lifted, in the order in which they are eaten. */
  inStore: v.array(
    v.object({
      planting: sentence,
      name: sentence,
      liftedOn: fullDate,
      /** Null where none was weighed or counted. */
      soundKg: range,
      soundBulbs: range,
      /** Of the bulbs lifted. */
      soundShare: range,
      lastsUntil: dateRange,
      /** Of those sound today, within 30 days. */
      lostNextShare: share,
      /** Of the bulbs brought in, as counted, else the usual. */
      thickNeckShare: share,
      /** When to look through the store; null where no look is left. */
      nextLook: v.nullable(fullDate),
      /** Looks through the store that were noted. */
      checks: count,
    }),
  ),
  /** Of the planting that was named; null where none was. */
  lift: v.nullable(
    v.object({
      planting: sentence,
      name: sentence,
      /** Null where no bulbs come in most years. */
      verdict: v.nullable(v.picklist(['lift', 'wait', 'before-rain', 'too-early', 'lifted'])),
      best: v.nullable(fullDate),
      topsOverShare: v.nullable(share),
      lossTodayShare: v.nullable(share),
      lossBestShare: v.nullable(share),
      /** Until necks are tight; null where they don't get there. */
      drying: v.array(v.object({ place: v.picklist(dryingPlaces), days: range, lossShare: share })),
      sentences: v.pipe(v.array(sentence), v.minLength(1)),
    }),
  ),
  eatFirst: v.array(sentence),
  shopping: v.array(
    v.object({
      what: v.picklist(['seeds', 'sets', 'bundles', 'trays', 'labels']),
      /** Null where it is for all lots. */
      lot: v.nullable(lotIndex),
      count,
      /** From the least to the most; null where it is not bought by weight. */
      massG: v.nullable(v.pipe(v.array(positive), v.length(2))),
      compostL: v.nullable(positive),
      sentence,
    }),
  ),
  cautions: v.array(sentence),
});

export type KeepDocument = v.InferOutput<typeof keepSchema>;
