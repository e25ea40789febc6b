import type { GardenBed } from '@neckfall/engine';
import { computed, type ReadonlySignal } from '@preact/signals';
import { bedAsked } from '../garden/bed-asked.ts';
import { gardenStanding } from './garden.ts';
import { asked } from './route.ts';

/** The bed of the kept garden in which the crop of the address lies; null where it lies in none. */
export const bed: ReadonlySignal<GardenBed | null> = computed(() => {
  const garden = gardenStanding.value?.garden;
  return garden ? bedAsked(garden, asked.value) : null;
});
