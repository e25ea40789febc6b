import {
  type Garden,
  type GardenPlace,
  keptDays,
  type StoreClimate,
  type StoredNow,
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
  return garden.plantings
    .filter(({ placeId }) => placeId === place.id)
    .flatMap((planting) => {
      const { id, name } = planting;
      const lot = { keepsMonths: keepingOf(garden.cultivars, planting), ...usualLifted };
      const kept = { plantingId: id, lot, store, liftedOn: null };
      const stored = storedNow(kept, garden.observations, today, tried);
      if (!stored || today - stored.liftedOn >= keptDays) return [];
      return [{ name, stored }];
    });
}
