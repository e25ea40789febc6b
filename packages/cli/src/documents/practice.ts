import type { PlanWithout } from '@neckfall/engine';

/** Every option as used; null where it has no part in this way of starting. */
export function practiceOf(plan: PlanWithout<'type' | 'traits' | 'startDay' | 'plantOutDay'>) {
  const { setSizeMm = null, setStore = null } = plan.start === 'sets' ? plan : {};
  const { nurseryTempC = null, lampHours = null } = plan.start === 'raised-seedlings' ? plan : {};
  return {
    densityPerM2: plan.densityPerM2,
    setSizeMm,
    setStore,
    cover: plan.cover,
    sunHours: plan.sunHours,
    water: plan.water,
    soil: plan.soil,
    nurseryTempC,
    lampHours,
  };
}
