import { gardenRanges } from './garden.ts';
import { type StorePlace, storePlaces } from './kitchen-words.ts';
import { isDate } from './observation.ts';
import { isNumberIn, isRecord, numberOrNull, type Tell, type Unknown } from './restoring.ts';

/** The air of a store as its grower read it on a day. */
export type StoreReading = Unknown & {
  /** ISO date. */
  date: string;
  /** The usual store that it is. */
  store: StorePlace;
  tempC: number;
  /** Relative, %; null where it was not read. */
  humidityPct: number | null;
};

/** One a day for a score of years: no garden has more. */
export const mostReadings = 7_500;

/** Readings by date, the first that is said first; one without day, store or temperature is none, and is told. */
export function restoreReadings(found: unknown, path: string, tell: Tell): StoreReading[] {
  if (found === undefined || found === null) return [];
  if (!Array.isArray(found) || found.length > mostReadings) {
    tell('emptied', path, found);
    return [];
  }
  return found.flatMap((entry: unknown, at) => {
    const reading = isRecord(entry) ? restoreReading(entry, `${path}[${at}]`, tell) : null;
    if (reading === null) tell('emptied', `${path}[${at}]`, entry);
    return reading ?? [];
  });
}

function restoreReading(found: Unknown, path: string, tell: Tell): StoreReading | null {
  const { date, tempC } = found;
  const store = storePlaces.find((place) => place === found.store);
  if (!isDate(date) || store === undefined || !isNumberIn(tempC, gardenRanges.storeTempC)) return null;
  return { ...found, date, store, tempC, humidityPct: numberOrNull(found, 'humidityPct', path, tell) };
}
