import type { GrowingOptions } from '@neckfall/engine';
import { computed, type ReadonlySignal } from '@preact/signals';
import { planOptions } from './plan-asked.ts';

/** How the crop is grown, whichever day it is started: a day of planting out belongs to one start alone. */
export const startOptions: ReadonlySignal<GrowingOptions> = computed(() => {
  const { plantOutDay: _, ...options } = planOptions.value;
  return options;
});
