import { papers } from '@neckfall/pictures';
import * as v from 'valibot';
import {
  dateRange,
  dayLengthClass,
  fullDate,
  head,
  onionType,
  onsetRange,
  range,
  seasonShares,
  share,
  startMethod,
  verdict,
} from './schema-parts.ts';

const words = v.pipe(v.string(), v.minLength(1));

export const handoutSchema = v.object({
  schema: v.literal('neckfall/handout@1'),
  ...head,
  today: fullDate,
  paper: v.picklist(Object.keys(papers) as (keyof typeof papers)[]),
  /** The crop that the headline names. */
  crop: v.object({
    class: dayLengthClass,
    type: onionType,
    start: startMethod,
    date: fullDate,
    outcome: verdict,
    gamble: v.boolean(),
    emergence: dateRange,
    plantOut: v.nullable(dateRange),
    onset: onsetRange,
    neckFall: dateRange,
    bulbDiameterMm: range,
    emergedShare: share,
    seasonShares,
  }),
  /** What stands on the sheet; lists are empty where no crop is advised. */
  heading: words,
  dateline: words,
  verdict: words,
  because: v.array(words),
  note: v.array(words),
  buy: v.array(words),
  when: v.array(v.object({ what: words, middle: words, range: v.string() })),
  signs: v.array(words),
  theYear: v.array(words),
  work: v.array(v.object({ days: words, what: words })),
  cautions: v.array(words),
  sure: v.array(words),
  grounds: v.array(words),
});

export type HandoutDocument = v.InferOutput<typeof handoutSchema>;
