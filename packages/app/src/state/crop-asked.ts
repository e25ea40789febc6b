import { civilDate } from '@neckfall/engine';
import { computed, type ReadonlySignal } from '@preact/signals';
import type { Asked } from '../address/address-form.ts';
import type { SeasonAheadAsked } from '../worker/season-ahead.ts';
import { type Onion, onion } from './onion.ts';
import { asked } from './route.ts';

type CropAsked = Pick<SeasonAheadAsked, 'crop' | 'starts' | 'start' | 'startDay'>;

/** The onion and its start as far as the address names them. */
export const cropAsked: ReadonlySignal<CropAsked> = computed(() => cropOf(asked.value, onion.value));

export function cropOf({ start, date }: Asked, { crop, starts }: Onion): CropAsked {
  // days to maturity count in the year of the start, where one is named
  const ofYear = crop && 'packet' in crop && date !== null ? { ...crop, year: civilDate(date).year } : crop;
  return {
    crop: ofYear,
    starts,
    start: start !== null && starts.includes(start) ? start : null,
    startDay: date,
  };
}
