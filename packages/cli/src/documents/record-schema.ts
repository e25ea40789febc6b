import * as v from 'valibot';
import { observationSchema } from './garden-schema.ts';
import { head } from './schema-parts.ts';

const text = v.pipe(v.string(), v.minLength(1));

export const recordSchema = v.object({
  schema: v.literal('neckfall/record@1'),
  engine: head.engine,
  place: v.null(),
  assumed: head.assumed,
  warnings: head.warnings,
  sources: head.sources,
  /** The garden file, as it was named. */
  file: text,
  planting: v.object({ id: text, name: text }),
  /** Id of the observation that was just noted. */
  recorded: text,
  /** What is odd about it; it was noted all the same. */
  questions: v.array(v.object({ code: text, sentence: text })),
  /** All that the file now holds of the planting, by date. */
  observations: v.array(observationSchema),
});

export type RecordDocument = v.InferOutput<typeof recordSchema>;
