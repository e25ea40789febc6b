import { bedOf, type Ground, groundOf, groundUnsaid, planDefaults } from '@neckfall/engine';
import { computed, type ReadonlySignal, signal } from '@preact/signals';
import { gardenStanding } from './garden.ts';
import { planOptions } from './plan-asked.ts';
import { planting } from './planting.ts';
import { asked } from './route.ts';

/** What the grower feeds with, where no bed keeps it: as long as the page stands. */
export const passingProduct = signal<string | null>(null);

/** The ground of the planting shown; where none is kept, what the address says of plants and distances. */
export const ground: ReadonlySignal<Ground> = computed(() => {
  const known = groundKnown();
  return { ...known, feedProduct: known.feedProduct ?? passingProduct.value };
});

function groundKnown(): Ground {
  const garden = gardenStanding.value?.garden;
  if (garden && planting.value) return groundOf(planting.value, bedOf(garden, planting.value));
  const { plants } = asked.value;
  const { densityPerM2 = planDefaults.densityPerM2 } = planOptions.value;
  return { ...groundUnsaid, areaM2: plants === null ? null : plants / densityPerM2 };
}
