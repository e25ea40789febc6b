import type { Plan } from '@neckfall/engine';

/** Every option as used; null where it has no part in this way of starting. */
export function practiceOf(plan: Omit<Plan, 'startDay' | 'plantOutDay'>) {
  const isSets = plan.start === 'sets';
  const isRaised = plan.start === 'raised-seedlings';
  return {
    densityPerM2: plan.densityPerM2,
    setSizeMm: isSets ? plan.setSizeMm : null,
    setStore: isSets ? plan.setStore : null,
    cover: plan.cover,
    sunHours: plan.sunHours,
    water: plan.water,
    soil: plan.soil,
    nurseryTempC: isRaised ? plan.nurseryTempC : null,
    lampHours: isRaised ? plan.lampHours : null,
  };
}
