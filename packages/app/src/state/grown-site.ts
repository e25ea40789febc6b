import { emptyGarden, type Garden, type GardenPlanting } from '@neckfall/engine';
import { computed, type ReadonlySignal } from '@preact/signals';
import { nothingAsked } from '../address/address.ts';
import { askedOf } from '../garden/asked-of.ts';
import { plantingsBefore } from '../garden/learnt-from.ts';
import { seenOf } from '../garden/seen.ts';
import type { EarlierSeason } from '../worker/belief-after.ts';
import type { SiteAsked } from '../worker/site.ts';
import { cropOf } from './crop-asked.ts';
import { gardenStanding } from './garden.ts';
import { onionAsked } from './onion.ts';
import { site, siteKey } from './place.ts';
import { optionsOf } from './plan-asked.ts';
import { planting } from './planting.ts';

/** Seasons that the planting shown starts from, the oldest first. */
const earlier: ReadonlySignal<readonly EarlierSeason[]> = computed(() => {
  const garden = gardenStanding.value?.garden ?? emptyGarden();
  const { value } = planting;
  return value ? plantingsBefore(garden, value).flatMap((before) => seasonOf(garden, before) ?? []) : [];
});

/** Null where it is not known what was started when. */
function seasonOf(garden: Garden, before: GardenPlanting): EarlierSeason | null {
  const asked = { ...nothingAsked, ...askedOf(garden, before) };
  const { crop, start, startDay } = cropOf(asked, onionAsked(asked, garden.cultivars));
  if (crop === null || start === null || startDay === null) return null;
  return { crop, plan: { ...optionsOf(asked), start, startDay }, seen: seenOf(garden, before.id) };
}

/** The ground with what is known of the onion that grows on it. */
export const grownSite: ReadonlySignal<SiteAsked | null> = computed(
  () => site.value && { ...site.value, earlier: earlier.value },
);

/** A key of {@link grownSite} that changes when an answer does. */
export const grownSiteKey: ReadonlySignal<string | null> = computed(() =>
  siteKey.value === null || earlier.value.length === 0
    ? siteKey.value
    : JSON.stringify([siteKey.value, earlier.value]),
);
