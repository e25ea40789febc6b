import { type Plan, planFields } from '@neckfall/engine';

/** Every option as used; null where it has no part in this way of starting. */
export function practiceOf(plan: Omit<Plan, 'startDay' | 'plantOutDay'>) {
  const used = <Field extends keyof typeof planFields>(field: Field): Plan[Field] | null => {
    const { only } = planFields[field];
    return only === null || only === plan.start ? plan[field] : null;
  };
  return {
    densityPerM2: plan.densityPerM2,
    setSizeMm: used('setSizeMm'),
    setStore: used('setStore'),
    cover: plan.cover,
    sunHours: plan.sunHours,
    water: plan.water,
    soil: plan.soil,
    nurseryTempC: used('nurseryTempC'),
    lampHours: used('lampHours'),
  };
}
