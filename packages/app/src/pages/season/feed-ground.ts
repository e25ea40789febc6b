import { bedOf, type Garden, type GardenBed } from '@neckfall/engine';
import { computed, type ReadonlySignal } from '@preact/signals';
import { changeGarden, gardenStanding } from '../../state/garden.ts';
import { passingProduct } from '../../state/ground.ts';
import { planting } from '../../state/planting.ts';

/** The bed in which the crop lies; null: in none. */
export const feedBed: ReadonlySignal<GardenBed | null> = computed(() => {
  const garden = gardenStanding.value?.garden;
  return garden && planting.value ? bedOf(garden, planting.value) : null;
});

/** Keeps what the grower feeds with in the bed, or in this page where there is none. */
export async function keepProduct(product: string | null): Promise<void> {
  const bed = feedBed.value;
  passingProduct.value = product;
  if (bed)
    await changeGarden(
      { code: 'changed', name: bed.name },
      (now) => now && withProduct(now, bed.id, product),
    );
}

function withProduct(garden: Garden, bedId: string, feedProduct: string | null): Garden {
  return {
    ...garden,
    beds: garden.beds.map((bed) => (bed.id === bedId ? { ...bed, feedProduct } : bed)),
  };
}
