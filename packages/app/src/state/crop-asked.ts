import { civilDate } from '@neckfall/engine';
import { computed, type ReadonlySignal } from '@preact/signals';
import type { SeasonAheadAsked } from '../worker/season-ahead.ts';
import { onion } from './onion.ts';
import { asked } from './route.ts';

/** The onion and its start as far as the address names them. */
export const cropAsked: ReadonlySignal<Pick<SeasonAheadAsked, 'crop' | 'starts' | 'start' | 'startDay'>> =
  computed(() => {
    const { crop, starts } = onion.value;
    const { start, date } = asked.value;
    // days to maturity count in the year of the start, where one is named
    const ofYear = crop && 'packet' in crop && date !== null ? { ...crop, year: civilDate(date).year } : crop;
    return {
      crop: ofYear,
      starts,
      start: start !== null && starts.includes(start) ? start : null,
      startDay: date,
    };
  });
