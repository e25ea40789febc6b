import { classOfType, type Plan, plantOutDayOf } from '@neckfall/engine';
import { computed, type ReadonlySignal } from '@preact/signals';
import type { Asked } from '../../address/address-form.ts';
import type { Taken } from '../../address/why-form.ts';
import { cropAsked } from '../../state/crop-asked.ts';
import { asked } from '../../state/route.ts';

type CropAsked = (typeof cropAsked)['value'];

/** The crop asked about: what was said of it, else what a link says was taken for it. */
export const whyCrop: ReadonlySignal<CropAsked> = computed(() => {
  const said = cropAsked.value;
  const { taken } = asked.value;
  if (taken === null || !goWith(taken, said)) return said;
  return {
    ...said,
    crop: said.crop ?? (taken.class && { class: taken.class }),
    start: taken.start,
    startDay: taken.date,
  };
});

/** What was taken for another crop is no more than that. */
function goWith(taken: Taken, { crop, start, startDay }: CropAsked): boolean {
  return (
    (crop === null) === (taken.class !== null) &&
    (start === null || start === taken.start) &&
    (startDay === null || startDay === taken.date)
  );
}

/** Whether anything of the crop had to be taken as most would have it. */
function isTaken(): boolean {
  const { crop, start, startDay } = cropAsked.value;
  return crop === null || start === null || startDay === null;
}

/** What a link has to say beside what was said, so that it opens to the same crop on any day. */
export function takenFor(plan: Plan): Partial<Asked> {
  if (!isTaken()) return { taken: null };
  const printed = cropAsked.value.crop === null ? classOfType[plan.type] : null;
  return { taken: { class: printed, start: plan.start, date: plan.startDay } };
}

/** The crop as the fields of a form show it. */
export function heldBy(plan: Plan) {
  return {
    class: cropAsked.value.crop === null ? classOfType[plan.type] : asked.value.class,
    start: plan.start,
    date: plan.startDay,
    plantOut: asked.value.plantOut ?? plantOutDayOf(plan),
  };
}
