import {
  checkWeather,
  type GardenWeather,
  recordOfGarden,
  type WeatherCheck,
  weatherNear,
} from '@neckfall/engine';
import { computed, type ReadonlySignal } from '@preact/signals';
import { gardenStanding } from './garden.ts';
import { asked } from './route.ts';

/** The weather that is kept of the place of the address; null: none. */
export const weatherHere: ReadonlySignal<GardenWeather | null> = computed(() => {
  const { at } = asked.value;
  const garden = gardenStanding.value?.garden;
  return at && garden ? weatherNear(garden, at) : null;
});

/** Why it can't be that of the place, as in a file made by hand; null: it can. No season is worked out with such. */
export const weatherFault: ReadonlySignal<WeatherCheck['impossible']> = computed(() => {
  const { at } = asked.value;
  const kept = weatherHere.value;
  return at && kept ? checkWeather(recordOfGarden(kept), at.latitudeDeg).impossible : null;
});
