import { type Like, likes, type StorePlace, storePlaces } from './kitchen-words.ts';
import { emptied, isRecord, numberOrNull, type Tell, type Unknown, wordOrNull } from './restoring.ts';
import { restoreReadings, type StoreReading } from './store-reading.ts';

/** The kitchen that the garden is to keep in onions; null where nothing was said. */
export type GardenKitchen = Unknown & {
  people: number | null;
  /** Of all its people together, fresh bulbs as they come from the store. */
  gramsPerWeek: number | null;
  store: StorePlace | null;
  /** Air of the store the year round, °C and % relative humidity: both known, it goes before {@link store}. */
  storeTempC: number | null;
  storeHumidityPct: number | null;
  /** What was read in usual stores, in no order. */
  storeReadings: StoreReading[];
  likes: Like[];
};

/** The kitchen from what was found there; null where there is none. */
export function restoreKitchen(found: unknown, tell: Tell): GardenKitchen | null {
  if (found === undefined || found === null) return null;
  if (!isRecord(found)) {
    tell('emptied', 'kitchen', found);
    return null;
  }
  const number = (field: Parameters<typeof numberOrNull>[1]) => numberOrNull(found, field, 'kitchen', tell);
  return {
    ...found,
    people: number('people'),
    gramsPerWeek: number('gramsPerWeek'),
    store: wordOrNull(found, 'store', storePlaces, 'kitchen', tell),
    storeTempC: number('storeTempC'),
    storeHumidityPct: number('storeHumidityPct'),
    storeReadings: restoreReadings(found.storeReadings, 'kitchen.storeReadings', tell),
    likes: likesOf(found, tell),
  };
}

/** Each once, in the order of {@link likes}. */
function likesOf(found: Unknown, tell: Tell): Like[] {
  const value = found.likes;
  if (!Array.isArray(value)) {
    emptied(found, 'likes', 'kitchen', tell);
    return [];
  }
  const known = likes.filter((like) => value.includes(like));
  if (known.length < new Set(value).size) tell('emptied', 'kitchen.likes', value);
  return known;
}
