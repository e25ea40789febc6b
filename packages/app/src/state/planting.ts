import type { GardenPlanting, JobMark, Observation } from '@neckfall/engine';
import { computed, type ReadonlySignal } from '@preact/signals';
import { plantingAsked } from '../garden/asked-of.ts';
import { marksOf } from '../garden/job-marks.ts';
import { seenOf } from '../garden/seen.ts';
import { gardenStanding } from './garden.ts';
import { asked } from './route.ts';

/** The planting of the kept garden that the address names; null where it has none of that id. */
export const planting: ReadonlySignal<GardenPlanting | null> = computed(() => {
  const garden = gardenStanding.value?.garden;
  return (garden && plantingAsked(garden, asked.value)) ?? null;
});

const none: readonly never[] = [];

/** What was seen of it, the newest first. */
export const seen: ReadonlySignal<readonly Observation[]> = computed(() => {
  const garden = gardenStanding.value?.garden;
  return garden && planting.value ? seenOf(garden, planting.value.id) : none;
});

/** What became of its work, in the order in which it was said. */
export const marks: ReadonlySignal<readonly JobMark[]> = computed(() => {
  const garden = gardenStanding.value?.garden;
  return garden && planting.value ? marksOf(garden, planting.value.id) : none;
});
