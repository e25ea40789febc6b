import { classOfType, emptyGarden, plantOutDayOf } from '@neckfall/engine';
import { idInAddress } from '../../address/address-form.ts';
import { type PlanToSave, withPlan } from '../../garden/planting-of.ts';
import { changeGarden } from '../../state/garden.ts';
import { onion } from '../../state/onion.ts';
import { placeName } from '../../state/place.ts';
import { asked, go } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import type { SeasonAhead } from '../../worker/season-ahead.ts';

/** The plan shown, as a garden takes it. */
export function planToSave({ summary: { plan } }: SeasonAhead): PlanToSave {
  const { say } = voice.value;
  return {
    asked: asked.value,
    plan: { start: plan.start, startDay: plan.startDay, plantOutDay: plantOutDayOf(plan) },
    class: classOfType[plan.type],
    placeName: asked.value.name ?? placeName.value,
    name: say('app.season.plan.name', {
      onion: onion.value.name ?? say(`type.${plan.type}`),
      start: say(`start.${plan.start}`),
    }),
  };
}

/**
 * Puts a plan in the place of a planting, else beside the others; the garden may have been changed in another tab
 * meanwhile. Returns the id of the planting, null where that failed.
 */
export async function keepPlan(plan: PlanToSave, inPlaceOf: string | null): Promise<string | null> {
  let plantingId = '';
  const step = { code: inPlaceOf === null ? 'added' : 'changed', name: plan.name } as const;
  const isDone = await changeGarden(step, (now) => {
    const next = withPlan(now ?? emptyGarden(), inPlaceOf, plan);
    plantingId = next.plantingId;
    return next.garden;
  });
  if (!isDone) return null;
  go({ planting: idInAddress(plantingId) }, { replace: true });
  return plantingId;
}
