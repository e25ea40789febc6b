import { packTowns } from './pack-towns.ts';
import { rasteriseLand } from './rasterise-land.ts';
import type { Place } from './read-places.ts';

/** Towns from here on are an asset of their own, which a browser can load first. */
const LARGE_TOWN_POPULATION = 15_000;

/** The place assets by name, not yet compressed. */
export function buildPlaceAssets(places: readonly Place[]): Map<string, Uint8Array> {
  const isLarge = (place: Place) => place.population >= LARGE_TOWN_POPULATION;
  return new Map([
    ['towns-large.bin', packTowns(places.filter(isLarge))],
    ['towns-small.bin', packTowns(places.filter((place) => !isLarge(place)))],
    ['land.bin', rasteriseLand(places)],
  ]);
}
