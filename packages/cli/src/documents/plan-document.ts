import { classOfType, formatDay, type Plan, plantOutDayOf } from '@neckfall/engine';
import type * as v from 'valibot';
import type { planSchema } from './plan-schema.ts';
import { practiceOf } from './practice.ts';

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
