import { findCultivar } from '@neckfall/data';
import {
  foldName,
  type Garden,
  type GardenPlace,
  keptDays,
  type StoreClimate,
  type StoredNow,
  storedNow,
  usualLifted,
} from '@neckfall/engine';
import { ordinaryKeeping } from './offers.ts';

/** A planting's name with what of it is in store. */
export type NamedStore = { name: string; stored: StoredNow; thickNeckShare: number };

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
    .flatMap(({ id, name, cultivar }) => {
      const lot = { keepsMonths: keepingOf(garden, cultivar), ...usualLifted };
      const planting = { plantingId: id, lot, store, liftedOn: null };
      const stored = storedNow(planting, garden.observations, today, tried);
      if (!stored || today - stored.liftedOn >= keptDays) return [];
      return [{ name, stored, thickNeckShare: lot.thickNeckShare }];
    });
}

/** Own onions come before those of the catalogue; one without a name keeps as an ordinary onion. */
function keepingOf({ cultivars: own }: Garden, name: string | null): readonly [number, number] {
  if (name === null) return ordinaryKeeping;
  const mine = own.find((onion) => foldName(onion.name) === foldName(name));
  if (mine) return mine.keepsMonths ?? ordinaryKeeping;
  return findCultivar(name).match?.keepsMonths ?? ordinaryKeeping;
}
