import { type GardenWeather, weatherNear } from '@neckfall/engine';
import { computed, type ReadonlySignal } from '@preact/signals';
import { gardenStanding } from './garden.ts';
import { asked } from './route.ts';

/** The weather that is kept of the place of the address; null: none. */
export const weatherHere: ReadonlySignal<GardenWeather | null> = computed(() => {
  const { at } = asked.value;
  const garden = gardenStanding.value?.garden;
  return at && garden ? weatherNear(garden, at) : null;
});
