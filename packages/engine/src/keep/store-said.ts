import type { StorePlace, StoreReading } from '../garden/index.ts';

/** Of a store whose air is the same the year round. */
export type StoreAir = { tempC: number; humidityPct: number };

/** A usual store in which the grower has read the air on some days. */
export type StoreRead = { place: StorePlace; readings: readonly StoreReading[] };

/** What was said of a store: a usual one by its name, with readings of its air, or its air the year round. */
export type StoreSaid = StorePlace | StoreRead | StoreAir;

/** A usual store with what was read of it, where something was. */
export function storeWith(place: StorePlace, readings: readonly StoreReading[]): StorePlace | StoreRead {
  const own = readings.filter(({ store }) => store === place);
  return own.length === 0 ? place : { place, readings: own };
}
