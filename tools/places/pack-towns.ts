import { packPlanes } from '../../packages/data/src/places/byte-planes.ts';
import {
  AREA_PLANES,
  DEGREE_PLANES,
  DEGREE_STEPS,
  ELEVATION_PLANES,
  GAZETTEER_MAGIC,
  GAZETTEER_VERSION,
  LOWEST_ELEVATION_M,
  POPULATION_PLANES,
  TOWN_PLANES,
} from '../../packages/data/src/places/gazetteer.ts';
import { packKeys } from '../../packages/data/src/places/key-table.ts';
import { packSections } from '../../packages/data/src/places/sections.ts';
import { nameFromKey } from '../../packages/data/src/places/town-name.ts';
import type { Place } from './read-places.ts';

type OtherKey = { readonly key: string; readonly town: number; readonly isFar: boolean };

/** The asset of some towns, not yet compressed. The same places in any order give the same bytes. */
export function packTowns(places: readonly Place[]): Uint8Array {
  const towns = [...places].sort(
    (a, b) =>
      compare(a.key, b.key) ||
      b.population - a.population ||
      compare(a.country, b.country) ||
      a.latitudeDeg - b.latitudeDeg ||
      a.longitudeDeg - b.longitudeDeg,
  );
  const others: OtherKey[] = towns
    .flatMap((town, i) => [...town.otherKeys].map(([key, isFar]) => ({ key, town: i, isFar })))
    .sort((a, b) => compare(a.key, b.key) || a.town - b.town);
  const areaOf = (town: Place) => `${town.country}\t${town.timeZone}\t${town.region ?? ''}`;
  const areas = [...new Set(towns.map(areaOf))].sort();
  const areaNumber = new Map(areas.map((area, i) => [area, i]));
  const encoder = new TextEncoder();
  const names = towns.map((town) => encoder.encode(town.name === nameFromKey(town.key) ? '' : town.name));

  return packSections(GAZETTEER_MAGIC, GAZETTEER_VERSION, [
    ...packKeys(towns.map((town) => town.key)),
    ...packKeys(others.map((other) => other.key)),
    packPlanes(
      others.map((other) => other.town),
      TOWN_PLANES,
    ),
    packPlanes(
      others.map((other) => Number(other.isFar)),
      1,
    ),
    packPlanes(
      names.map((name) => name.length),
      1,
    ),
    joined(names),
    encoder.encode(areas.join('\n')),
    packPlanes(
      towns.map((town) => areaNumber.get(areaOf(town)) as number),
      AREA_PLANES,
    ),
    packPlanes(
      towns.map((town) => Math.round((town.latitudeDeg + 90) * DEGREE_STEPS)),
      DEGREE_PLANES,
    ),
    packPlanes(
      towns.map((town) => Math.round((town.longitudeDeg + 180) * DEGREE_STEPS)),
      DEGREE_PLANES,
    ),
    packPlanes(
      towns.map((town) => town.elevationM - LOWEST_ELEVATION_M),
      ELEVATION_PLANES,
    ),
    packPlanes(
      towns.map((town) => town.population),
      POPULATION_PLANES,
    ),
  ]);
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

function joined(parts: readonly Uint8Array[]): Uint8Array {
  const bytes = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    bytes.set(part, at);
    at += part.length;
  }
  return bytes;
}
