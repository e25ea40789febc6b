import type { GardenPlanting, Observation } from '@neckfall/engine';
import { computed, type ReadonlySignal } from '@preact/signals';
import { plantingAsked } from '../garden/asked-of.ts';
import { seenOf } from '../garden/seen.ts';
import { gardenStanding } from './garden.ts';
import { asked } from './route.ts';

/** The planting of the kept garden that the address names; null where it has none of that id. */
export const planting: ReadonlySignal<GardenPlanting | null> = computed(() => {
  const garden = gardenStanding.value?.garden;
  return (garden && plantingAsked(garden, asked.value)) ?? null;
});

const none: readonly Observation[] = [];

/** What was seen of it, the newest first. */
export const seen: ReadonlySignal<readonly Observation[]> = computed(() => {
  const garden = gardenStanding.value?.garden;
  return garden && planting.value ? seenOf(garden, planting.value.id) : none;
});
