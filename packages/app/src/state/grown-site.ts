import { believedOf, type Garden, type GardenPlanting } from '@neckfall/engine';
import { computed, type ReadonlySignal } from '@preact/signals';
import { nothingAsked } from '../address/address.ts';
import { askedOf } from '../garden/asked-of.ts';
import { seenOf, toLearnFrom } from '../garden/seen.ts';
import { weatherAsked } from '../garden/weather-met.ts';
import type { EarlierSeason } from '../worker/belief-after.ts';
import type { SiteAsked, WeatherMet } from '../worker/site.ts';
import { cropOf } from './crop-asked.ts';
import { gardenStanding } from './garden.ts';
import { onionAsked } from './onion.ts';
import { site, siteKey } from './place.ts';
import { optionsOf } from './plan-asked.ts';
import { planting } from './planting.ts';
import { today } from './today.ts';
import { weatherFault, weatherHere } from './weather.ts';

/** Seasons that the planting shown starts from, the oldest first. */
const earlier: ReadonlySignal<readonly EarlierSeason[]> = computed(() => {
  const garden = gardenStanding.value?.garden;
  if (!garden || !planting.value) return [];
  const seasons: EarlierSeason[] = [];
  // which they are is asked here, and what they told in the worker
  believedOf(garden, planting.value, (before) => {
    const season = seasonOf(garden, before);
    if (season) seasons.push(season);
    return null;
  });
  return seasons;
});

/** Null where it is not known what was started when. */
function seasonOf(garden: Garden, before: GardenPlanting): EarlierSeason | null {
  const told = { ...nothingAsked, ...askedOf(garden, before) };
  const { crop, start, startDay } = cropOf(told, onionAsked(told, garden.cultivars));
  if (crop === null || start === null || startDay === null) return null;
  return {
    crop,
    plan: { ...optionsOf(told), start, startDay },
    seen: toLearnFrom(seenOf(garden, before.id), today.value),
  };
}

/** The weather that came here, as far as it is kept. */
const weather: ReadonlySignal<WeatherMet | null> = computed(() => {
  const kept = weatherHere.value;
  return kept && weatherFault.value === null ? weatherAsked(kept, today.value) : null;
});

/** The ground with what is known of the onion that grows on it and of the weather it has met. */
export const grownSite: ReadonlySignal<SiteAsked | null> = computed(
  () => site.value && { ...site.value, earlier: earlier.value, weather: weather.value },
);

/** A key of {@link grownSite} that changes when an answer does. */
export const grownSiteKey: ReadonlySignal<string | null> = computed(() =>
  siteKey.value === null || (earlier.value.length === 0 && weather.value === null)
    ? siteKey.value
    : JSON.stringify([siteKey.value, earlier.value, weather.value?.key ?? null]),
);
