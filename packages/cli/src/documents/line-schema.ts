import * as v from 'valibot';
import { answersSchema } from './answers-schema.ts';
import { seasonSchema } from './season-schema.ts';
import { whereSchema } from './where-schema.ts';

/** The row's own id, or the line of the file on which the row begins. */
const id = v.union([v.string(), v.pipe(v.number(), v.integer(), v.minValue(2))]);

const error = v.object({
  code: v.pipe(v.string(), v.regex(/^[a-z-]+$/)),
  /** The column at fault. */
  field: v.nullable(v.string()),
  message: v.pipe(v.string(), v.minLength(1)),
});

const failedLine = v.strictObject({ id, error });

/** A line of `--batch`: the document of its row, or why there is none. */
export const seasonLineSchema = v.union([failedLine, v.object({ id, ...seasonSchema.entries })]);
export const answersLineSchema = v.union([failedLine, v.object({ id, ...answersSchema.entries })]);
export const whereLineSchema = v.union([failedLine, v.object({ id, ...whereSchema.entries })]);
