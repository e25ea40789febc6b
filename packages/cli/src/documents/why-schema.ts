import {
  causes,
  passedOver,
  planFields,
  questionAnswers,
  questions,
  symptoms,
  whyCautions,
} from '@neckfall/engine';
import * as v from 'valibot';
import { planSchema } from './plan-schema.ts';
import { fullDate, head, positive, range, share, verdict } from './schema-parts.ts';

const sentence = v.pipe(v.string(), v.minLength(1));
const sentences = v.array(sentence);
const symptom = v.picklist(symptoms);
const question = v.picklist(questions);
const answer = v.picklist([...new Set([...Object.values(questionAnswers).flat(), passedOver])]);

/** A code with its numbers, days as dates. */
const coded = v.objectWithRest({ code: sentence }, v.union([v.string(), v.number()]));

/** A season as it came, or as it might have come. */
const grown = {
  outcome: verdict,
  goodShare: share,
  bulbDiameterMm: range,
  leavesAtOnset: v.nullable(positive),
  boltedPlantsShare: share,
  onset: v.nullable(fullDate),
  neckFall: v.nullable(fullDate),
  /** Of the bulbs, on the day asked about; null where no store is in question. */
  soundShare: v.nullable(share),
};

export const whySchema = v.object({
  schema: v.literal('neckfall/why@1'),
  ...head,
  today: fullDate,
  /** Of the garden; null where the plan was given. */
  planting: v.nullable(sentence),
  /** As it was grown. */
  plan: planSchema,
  /** Fields of the plan that were said; all others are what is usual, and may have been otherwise. */
  said: v.array(v.picklist([...Object.keys(planFields), 'onion', 'start', 'date', 'plantOut', 'sunHours'])),
  seen: v.pipe(v.array(symptom), v.minLength(1)),
  noticed: v.nullable(fullDate),
  answers: v.array(v.object({ question, answer })),
  answer: sentence,
  /** What to do today with what is there. */
  rescue: v.pipe(sentences, v.minLength(1)),
  eating: v.picklist(['yes', 'cut-away', 'no']),
  storing: v.picklist(['yes', 'eat-first', 'no']),
  /** The season as told. */
  asGrown: v.object(grown),
  /** Likeliest first; their probabilities and `unseen` make 1. */
  causes: v.array(
    v.object({
      cause: v.picklist(causes),
      name: sentence,
      probability: share,
      for: sentences,
      against: sentences,
      evidence: v.object({ for: v.array(coded), against: v.array(coded) }),
      /** What to look at to know; null where running the season again tells. */
      look: v.nullable(sentence),
      advice: sentence,
      /** The same season without it; null where no run can do without it. */
      whatIf: v.nullable(
        v.object({
          change: sentence,
          changed: coded,
          sentence,
          ...grown,
          /** With it at work. */
          atWork: v.object(grown),
        }),
      ),
    }),
  ),
  /** Of what no run and no list can know. */
  unseen: share,
  /** What to answer next, with `--said QUESTION=ANSWER`; null: nothing would tell much more. */
  ask: v.nullable(
    v.object({
      question,
      sentence,
      answers: v.array(answer),
      labels: sentences,
    }),
  ),
  nextYear: v.nullable(
    v.object({
      plan: planSchema,
      /** Null where the plan is to stay as it is. */
      change: v.nullable(coded),
      sentence,
      ...grown,
    }),
  ),
  cautions: sentences,
  cautionCodes: v.array(v.picklist(whyCautions)),
});

export type WhyDocument = v.InferOutput<typeof whySchema>;
