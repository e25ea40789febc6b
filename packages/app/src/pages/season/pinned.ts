import { classOfType, type SeasonSummary } from '@neckfall/engine';
import type { Asked } from '../../state/address-form.ts';
import { asked } from '../../state/route.ts';

/** The plan shown as an address names it: what was chosen for the reader is written down with what they asked. */
export function pinned({ plan }: Pick<SeasonSummary, 'plan'>): Partial<Asked> {
  const { class: printed, cultivar, packetHours } = asked.value;
  const isNamed = cultivar !== null || packetHours !== null || printed !== null;
  return {
    class: isNamed ? printed : classOfType[plan.type],
    start: plan.start,
    date: plan.startDay,
    plantOut: plan.plantOutDay,
  };
}
