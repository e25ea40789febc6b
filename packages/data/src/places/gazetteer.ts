import { readPlanes } from './byte-planes.ts';
import { KEY_TABLE_SECTIONS, type KeyTable, keyAt, openKeys } from './key-table.ts';
import { openSections } from './sections.ts';
import type { Town } from './town.ts';
import { nameFromKey } from './town-name.ts';

export const GAZETTEER_MAGIC = 'NFTN';
export const GAZETTEER_VERSION = 1;

export const POPULATION_PLANES = 4;
export const DEGREE_PLANES = 3;
export const ELEVATION_PLANES = 2;
export const AREA_PLANES = 2;
export const TOWN_PLANES = 3;
/** Degrees are stored in thousandths above −90 and −180, metres above the lowest shore on Earth. */
export const DEGREE_STEPS = 1000;
export const LOWEST_ELEVATION_M = -500;

/**
 * One asset: towns in the order of their own folded names (the more populous first among equals), in columns.
 * Nothing is made into an object before it is asked for.
 */
export type GazetteerPart = {
  /** The number of the first town of this part in the whole gazetteer. */
  readonly firstTown: number;
  readonly count: number;
  readonly keys: KeyTable;
  readonly otherKeys: KeyTable;
  readonly otherKeyTown: Uint8Array;
  /** 1 where another spelling is unlike the town's own name. */
  readonly otherKeyIsFar: Uint8Array;
  readonly nameOffsets: Uint32Array;
  readonly names: Uint8Array;
  /** Country, time zone and region, by number of the combination. */
  readonly areas: readonly (readonly [country: string, timeZone: string, region: string])[];
  readonly area: Uint8Array;
  readonly latitude: Uint8Array;
  readonly longitude: Uint8Array;
  readonly elevation: Uint8Array;
  readonly population: Uint8Array;
};

/** Towns ready to be looked up. */
export type Gazetteer = { readonly parts: readonly GazetteerPart[]; readonly townCount: number };

/**
 * Opens one asset or several together, gzipped or not: the towns of ≥ 15,000 people alone, or with the smaller
 * ones. Throws when the bytes are of another kind or version.
 */
export function openGazetteer(...assets: readonly Uint8Array[]): Gazetteer {
  const parts: GazetteerPart[] = [];
  let townCount = 0;
  for (const bytes of assets) {
    const part = openPart(openSections(bytes, GAZETTEER_MAGIC, GAZETTEER_VERSION), townCount);
    parts.push(part);
    townCount += part.count;
  }
  return { parts, townCount };
}

function openPart(sections: readonly Uint8Array[], firstTown: number): GazetteerPart {
  const keys = openKeys(sections.slice(0, KEY_TABLE_SECTIONS));
  const otherKeys = openKeys(sections.slice(KEY_TABLE_SECTIONS, 2 * KEY_TABLE_SECTIONS));
  const [
    otherKeyTown,
    otherKeyIsFar,
    nameLengths,
    names,
    areaText,
    area,
    latitude,
    longitude,
    elevation,
    population,
  ] = sections.slice(2 * KEY_TABLE_SECTIONS);
  const nameOffsets = new Uint32Array(keys.count + 1);
  for (let row = 0; row < keys.count; row++) nameOffsets[row + 1] = nameOffsets[row] + nameLengths[row];
  const areas = new TextDecoder()
    .decode(areaText)
    .split('\n')
    .map((line) => {
      const [country, timeZone, region] = line.split('\t');
      return [country, timeZone, region] as const;
    });
  return {
    firstTown,
    count: keys.count,
    keys,
    otherKeys,
    otherKeyTown,
    otherKeyIsFar,
    nameOffsets,
    names,
    areas,
    area,
    latitude,
    longitude,
    elevation,
    population,
  };
}

export function partOf(gazetteer: Gazetteer, town: number): GazetteerPart {
  if (town >= 0) for (const part of gazetteer.parts) if (town < part.firstTown + part.count) return part;
  throw new RangeError(`town ${town}: a number from 0 to ${gazetteer.townCount - 1} was expected`);
}

export function populationAt(part: GazetteerPart, row: number): number {
  return readPlanes(part.population, part.count, row);
}

export function latitudeAt(part: GazetteerPart, row: number): number {
  return (readPlanes(part.latitude, part.count, row) - 90 * DEGREE_STEPS) / DEGREE_STEPS;
}

export function longitudeAt(part: GazetteerPart, row: number): number {
  return (readPlanes(part.longitude, part.count, row) - 180 * DEGREE_STEPS) / DEGREE_STEPS;
}

/** The town of a number from 0 to townCount − 1. */
export function townAt(gazetteer: Gazetteer, town: number): Town {
  const part = partOf(gazetteer, town);
  const row = town - part.firstTown;
  const written = part.names.subarray(part.nameOffsets[row], part.nameOffsets[row + 1]);
  const [country, timeZone, region] = part.areas[readPlanes(part.area, part.count, row)];
  return {
    name: written.length > 0 ? new TextDecoder().decode(written) : nameFromKey(keyAt(part.keys, row)),
    country,
    region: region === '' ? null : region,
    latitudeDeg: latitudeAt(part, row),
    longitudeDeg: longitudeAt(part, row),
    elevationM: readPlanes(part.elevation, part.count, row) + LOWEST_ELEVATION_M,
    population: populationAt(part, row),
    timeZone,
  };
}
