import { jobNames } from '@neckfall/engine';
import * as v from 'valibot';
import { fullDate, head, startMethod } from './schema-parts.ts';

const text = v.pipe(v.string(), v.minLength(1));
/** Of a planting of the garden file; null where the plan is of the command line. */
const planting = v.nullable(text);

export const jobsSchema = v.object({
  schema: v.literal('neckfall/jobs@1'),
  ...head,
  /** Null where the plantings lie at several places. */
  place: v.nullable(head.place),
  today: fullDate,
  plantings: v.array(
    v.object({
      id: planting,
      name: v.nullable(v.string()),
      cultivar: v.nullable(v.string()),
      place: text,
      start: startMethod,
      date: fullDate,
      liftedOn: v.nullable(fullDate),
    }),
  ),
  /** Plantings of the garden whose work is not told, and why not. */
  leftOut: v.array(v.object({ id: text, name: v.string(), why: text })),
  /** Five at most, most urgent first. */
  thisWeek: v.array(v.object({ planting, id: text })),
  jobs: v.array(
    v.object({
      /** Its name, with a number from the second on where it comes again. */
      id: text,
      planting,
      job: v.picklist(jobNames),
      from: fullDate,
      best: fullDate,
      to: fullDate,
      state: v.picklist(['gone-by', 'now', 'coming', 'done', 'left-out']),
      why: text,
      source: text,
      cautions: v.array(text),
    }),
  ),
});

export type JobsDocument = v.InferOutput<typeof jobsSchema>;
