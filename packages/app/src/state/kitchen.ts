import { usualGramsPerWeek } from '@neckfall/data';
import { emptyGarden, type Household, type StoreReading } from '@neckfall/engine';
import { computed, type ReadonlySignal } from '@preact/signals';
import {
  askedOfKitchen,
  householdOf,
  type KitchenSaid,
  kitchenOf,
  saysKitchen,
} from '../garden/kitchen-of.ts';
import { changeGarden, gardenStanding } from './garden.ts';
import { country, placeName } from './place.ts';
import { asked, go } from './route.ts';

/** What one person eats in the country of the place, and where that is from. */
export const usualUse = computed(() => usualGramsPerWeek(country.value));

/** What the address says of the kitchen, else the garden. */
export const kitchenSaid: ReadonlySignal<KitchenSaid> = computed(() => {
  const { people, gramsPerWeek, store, likes } = asked.value;
  const inAddress = { people, gramsPerWeek, store, likes };
  return saysKitchen(inAddress) ? inAddress : askedOfKitchen(gardenStanding.value?.garden?.kitchen ?? null);
});

/** What the garden has read of the air in its stores. */
export const storeReadings: ReadonlySignal<readonly StoreReading[]> = computed(
  () => gardenStanding.value?.garden?.kitchen?.storeReadings ?? [],
);

/** The kitchen that is planned for; what was not said is as usual. */
export const household: ReadonlySignal<Household> = computed(() =>
  householdOf(
    { ...kitchenSaid.value, seedAge: asked.value.seedAge },
    usualUse.value.gramsPerPerson,
    storeReadings.value,
  ),
);

/** Says more of the kitchen: in the address, and in the garden where there is one. */
export async function sayKitchen(changes: Partial<KitchenSaid>): Promise<void> {
  const said = { ...kitchenSaid.value, ...changes };
  go(said, { replace: true });
  if (gardenStanding.value?.garden) await keepKitchen(said);
}

/** Puts the kitchen into the garden kept here, which begins with it where there is none. */
export function keepKitchen(said: KitchenSaid): Promise<boolean> {
  return changeGarden({ code: 'kitchen', name: placeName.value }, (now) => {
    const garden = now ?? emptyGarden();
    return { ...garden, kitchen: kitchenOf(said, garden.kitchen) };
  });
}

/** Puts what was read of stores into the garden kept here, with the kitchen as it stands. */
export function keepReadings(readings: readonly StoreReading[]): Promise<boolean> {
  const said = kitchenSaid.value;
  return changeGarden({ code: 'kitchen', name: placeName.value }, (now) => {
    const garden = now ?? emptyGarden();
    const kitchen = garden.kitchen ?? kitchenOf(said, null);
    return { ...garden, kitchen: { ...kitchen, storeReadings: [...readings] } };
  });
}
