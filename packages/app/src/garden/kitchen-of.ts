import { type GardenKitchen, type Household, type StoreReading, storeWith } from '@neckfall/engine';
import type { Asked } from '../address/address-form.ts';

/** What is said of a kitchen, in an address or in a garden. */
export type KitchenSaid = Pick<Asked, 'people' | 'gramsPerWeek' | 'store' | 'likes'>;

const nothingSaid: KitchenSaid = { people: null, gramsPerWeek: null, store: null, likes: null };

export function saysKitchen({ people, gramsPerWeek, store, likes }: KitchenSaid): boolean {
  return people !== null || gramsPerWeek !== null || store !== null || likes !== null;
}

/** What an address says of the kitchen of a garden. */
export function askedOfKitchen(kitchen: GardenKitchen | null): KitchenSaid {
  if (kitchen === null) return nothingSaid;
  const { people, gramsPerWeek, store, storeTempC, storeHumidityPct, likes } = kitchen;
  return {
    people,
    gramsPerWeek,
    store:
      storeTempC !== null && storeHumidityPct !== null
        ? { tempC: storeTempC, humidityPct: storeHumidityPct }
        : store,
    likes: likes.length > 0 ? likes : null,
  };
}

/** The same as a garden has it; fields unknown here stay. */
export function kitchenOf(said: KitchenSaid, before: GardenKitchen | null): GardenKitchen {
  const { people, gramsPerWeek, store, likes } = said;
  const air = store !== null && typeof store !== 'string' ? store : null;
  return {
    ...before,
    people,
    gramsPerWeek,
    store: typeof store === 'string' ? store : null,
    storeTempC: air?.tempC ?? null,
    storeHumidityPct: air?.humidityPct ?? null,
    storeReadings: before?.storeReadings ?? [],
    likes: [...(likes ?? [])],
  };
}

/** Taken where nothing is said; the store as on the command line, so that both give the same answer. */
const usualPeople = 2;
const usualStore = 'cellar';

/** The kitchen that is planned for; what was not said is as usual. */
export function householdOf(
  { people, gramsPerWeek, store, likes, seedAge }: KitchenSaid & Pick<Asked, 'seedAge'>,
  usualGrams: number,
  readings: readonly StoreReading[],
): Household {
  const eaters = people ?? usualPeople;
  return {
    people: eaters,
    gramsPerWeek: gramsPerWeek ?? eaters * usualGrams,
    // air said to be the same all year needs no reading
    store: typeof store === 'object' && store !== null ? store : storeWith(store ?? usualStore, readings),
    likes: likes ?? [],
    seedAge,
  };
}
