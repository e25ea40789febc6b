import {
  type Garden,
  type GardenPlace,
  keptDays,
  keptLotOf,
  type LookedAt,
  type StoreClimate,
  type StoredNow,
  type StoredPlanting,
  storedNow,
  usualLifted,
} from '@neckfall/engine';
import { keepingOf } from './keeping-of.ts';

/** A planting's name with what of it is in store. */
export type NamedStore = { name: string; stored: StoredNow };

/** What of the plantings of a place was lifted and may still be in store. */
export function inStoreOf(
  garden: Garden,
  place: Pick<GardenPlace, 'id'>,
  store: StoreClimate,
  today: number,
  tried: { seasons: number; seed: number },
): NamedStore[] {
  return storedPlantings(garden, place, store).flatMap(({ name, kept }) => {
    const stored = storedNow(kept, garden.observations, today, tried);
    if (!stored || today - stored.liftedOn >= keptDays) return [];
    return [{ name, stored }];
  });
}

/** Plantings of a place, of this year and of years before, at which somebody has looked in their store. */
export function storeLookedAt(
  garden: Garden,
  place: Pick<GardenPlace, 'id'>,
  store: StoreClimate,
  today: number,
): LookedAt[] {
  return storedPlantings(garden, place, store).flatMap(({ kept }) => {
    const lot = keptLotOf(kept, garden.observations, today);
    return lot && lot.looked.checks.length > 0 ? [lot.looked] : [];
  });
}

function storedPlantings(garden: Garden, place: Pick<GardenPlace, 'id'>, store: StoreClimate) {
  return garden.plantings
    .filter(({ placeId }) => placeId === place.id)
    .map((planting): { name: string; kept: StoredPlanting } => {
      const lot = { keepsMonths: keepingOf(garden.cultivars, planting), ...usualLifted };
      return { name: planting.name, kept: { plantingId: planting.id, lot, store, liftedOn: null } };
    });
}
