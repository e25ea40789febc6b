import { classOfType, type SeasonSummary } from '@neckfall/engine';
import type { Asked } from '../../address/address-form.ts';
import { cropAsked } from '../../state/crop-asked.ts';
import { onion } from '../../state/onion.ts';
import { asked } from '../../state/route.ts';

/**
 * The plan as an address names it: what was chosen for the reader is written down with what they asked. What they asked
 * goes before the plan shown, which may be that of an earlier question while the next one is being answered.
 */
export function pinned({ plan }: Pick<SeasonSummary, 'plan'>) {
  const { start, startDay } = cropAsked.value;
  return {
    class: onion.value.crop === null ? classOfType[plan.type] : asked.value.class,
    start: start ?? plan.start,
    date: startDay ?? plan.startDay,
    plantOut: asked.value.plantOut,
  } satisfies Partial<Asked>;
}
