import { classOfType, formatDay, type Plan, plantOutDayOf } from '@neckfall/engine';
import * as v from 'valibot';
import { practiceOf } from './practice.ts';
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

export function planDocument(plan: Plan, cultivar: string | null): v.InferOutput<typeof planSchema> {
  const plantOutDay = plantOutDayOf(plan);
  return {
    class: classOfType[plan.type],
    type: plan.type,
    cultivar,
    start: plan.start,
    date: formatDay(plan.startDay),
    plantOut: plantOutDay === null ? null : formatDay(plantOutDay),
    ...practiceOf(plan),
  };
}
