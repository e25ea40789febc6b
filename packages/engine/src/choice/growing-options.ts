import type { PlanForm } from '../season/index.ts';

/** How a crop is grown, whichever it is and however it is started; what is left out is as in `planDefaults`. */
export type GrowingOptions = Partial<
  Omit<PlanForm, 'type' | 'traits' | 'start' | 'startDay' | 'plantOutDay'>
>;
