import { fertilities } from '@neckfall/engine';
import * as v from 'valibot';
import { fullDate, head, positive } from './schema-parts.ts';

const sentence = v.pipe(v.string(), v.minLength(1));

export const feedSchema = v.object({
  schema: v.literal('neckfall/feed@1'),
  ...head,
  /** Of a garden file; null where the plan was given with options. */
  planting: v.nullable(v.object({ id: v.string(), name: v.string() })),
  /** In the order of their days; nitrogen that is still to be given, 0 once what was fed covers it. */
  feeds: v.array(
    v.object({
      stage: v.pipe(v.string(), v.regex(/^(before-start|leaves-\d+)$/)),
      date: fullDate,
      nGPerM2: positive,
      /** N-P-K as printed (N, P₂O₅, K₂O), or an organic source by its name. */
      product: sentence,
      gramsPerM2: positive,
      /** Null where the bed's size is not known. */
      gramsForBed: v.nullable(positive),
    }),
  ),
  /** To be had in all for the crop aimed at, and what soil, compost and legumes give of it. */
  nitrogenGPerM2: positive,
  fromSoilGPerM2: positive,
  /** The first day on which bulbs may begin: no nitrogen from here on; null where they don't. */
  stopBy: v.nullable(fullDate),
  why: sentence,
  aimKgPerM2: positive,
  /** Taken away with the crop aimed at. */
  takenGPerM2: positive,
  fertility: v.picklist(fertilities),
  fromBed: v.object({ soilGPerM2: positive, compostGPerM2: positive, legumeGPerM2: positive }),
  /** To be given in all, and what no feed can bring of it. */
  toGiveGPerM2: positive,
  leftOutGPerM2: positive,
  /** Nitrogen fed so far; null where it was fed on ground whose size is not known. */
  givenGPerM2: v.nullable(positive),
  /** What the feeds listed bring beside, as oxides; null where the product doesn't say. */
  besides: v.nullable(v.object({ phosphateGPerM2: positive, potashGPerM2: positive })),
  bedM2: v.nullable(positive),
  soilPh: v.nullable(v.number()),
  lime: v.nullable(v.picklist(['lime', 'lime-perhaps', 'fits', 'no-lime'])),
  /** On phosphorus, potassium, sulphur, seedlings in trays and lime. */
  advice: v.array(sentence),
  cautions: v.array(sentence),
});

export type FeedDocument = v.InferOutput<typeof feedSchema>;
