import * as v from 'valibot';
import { dayLengthClass, fullDate, onionType, practice, startMethod } from './schema-parts.ts';

/** A plan as documents have it: every option as used. */
export const planSchema = v.object({
  class: dayLengthClass,
  type: onionType,
  cultivar: v.nullable(v.string()),
  start: startMethod,
  date: fullDate,
  plantOut: v.nullable(fullDate),
  ...practice,
});
