import { classOfType, type SeasonSummary } from '@neckfall/engine';
import type { Asked } from '../../state/address-form.ts';
import { onion } from '../../state/onion.ts';
import { asked } from '../../state/route.ts';

/** The plan shown as an address names it: what was chosen for the reader is written down with what they asked. */
export function pinned({ plan }: Pick<SeasonSummary, 'plan'>): Partial<Asked> {
  const isChosen = onion.value.crop === null;
  return {
    class: isChosen ? classOfType[plan.type] : asked.value.class,
    start: plan.start,
    date: plan.startDay,
    plantOut: plan.plantOutDay,
  };
}
