import { commonQuestions, seasonRoles } from '@neckfall/engine';
import * as v from 'valibot';
import { planSchema } from './plan-schema.ts';
import { dateRange, fullDate, head, positive, range, seasonShares, verdict } from './schema-parts.ts';

const sentence = v.pipe(v.string(), v.minLength(1));
const sentences = v.array(sentence);
const count = v.pipe(v.number(), v.integer(), v.minValue(0));

/** A season that an answer was read from, and what it shows there. */
const season = v.object({
  role: v.picklist(seasonRoles),
  plan: planSchema,
  outcome: verdict,
  gamble: v.boolean(),
  seasonShares,
  bulbDiameterMm: range,
  boltedPlantsShare: range,
  winterKilledPlantsShare: range,
  neckFall: v.object(dateRange.entries),
});

export const answersSchema = v.object({
  schema: v.literal('neckfall/answers@1'),
  ...head,
  today: fullDate,
  answers: v.pipe(
    v.array(
      v.object({
        question: v.picklist(commonQuestions),
        /** As people ask it. */
        asked: sentence,
        answer: sentence,
        because: sentences,
        cautions: sentences,
        seasons: v.array(season),
        /** Days that a kind of elsewhere waits for, and the longest of the place, sun-up; null where none is in question. */
        days: v.nullable(v.object({ neededSunUpH: positive, longestSunUpH: positive })),
        /** Null but where a year's planting was asked for. */
        kitchen: v.nullable(
          v.object({
            people: count,
            gramsPerWeek: positive,
            bedM2: positive,
            plants: count,
            lots: v.array(v.object({ plants: count, bedM2: positive, lastsUntil: dateRange })),
            gaps: v.array(v.object({ from: fullDate, to: fullDate })),
          }),
        ),
      }),
    ),
    v.minLength(1),
  ),
});

export type AnswersDocument = v.InferOutput<typeof answersSchema>;
