import { foldName } from '../../packages/data/src/places/fold-name.ts';
import { DEGREE_STEPS } from '../../packages/data/src/places/gazetteer.ts';
import type { Town } from '../../packages/data/src/places/town.ts';
import { type CityRow, citiesTable } from './cities-table.ts';
import { regionCode } from './region-codes.ts';

/** A town as it is packed: its folded name, and its other spellings by folded name. */
export type Place = Town & { readonly key: string; readonly otherKeys: ReadonlyMap<string, boolean> };

const SMALLEST_POPULATION = 1000;
const OTHER_SPELLINGS_POPULATION = 50_000;

/** Given up, destroyed or historical: nobody gardens there. */
const GONE = new Set(['PPLH', 'PPLQ', 'PPLW', 'PPLCH']);

/** GeoNames' mark for "no value in the elevation model"; those places lie on a shore. */
const NO_ELEVATION = -9999;

/** Every place of at least 1,000 people, from the data of GeoNames (CC BY 4.0). */
export function readPlaces(): Place[] {
  const places: Place[] = [];
  for (const row of citiesTable()) {
    if (row.population < SMALLEST_POPULATION || GONE.has(row.featureCode) || isNumberedDistrict(row))
      continue;
    const asciiKey = foldName(row.asciiName || row.name);
    const name = isAscii(foldName(row.name)) ? row.name : row.asciiName;
    const key = foldName(name);
    if (!isAscii(key) || key === '') throw new Error(`${row.name} (${row.id}): has no name in Latin letters`);
    const isLarge = row.population >= OTHER_SPELLINGS_POPULATION || row.featureCode === 'PPLC';
    const spellings = isLarge ? row.alternateNames.filter(isNameInLatinLetters).map(foldName) : [];
    const otherKeys = new Map<string, boolean>();
    for (const other of [asciiKey, ...spellings]) {
      if (other !== key && isAscii(other) && other.length >= 3) otherKeys.set(other, isFarFrom(other, key));
    }
    places.push({
      key,
      otherKeys,
      name,
      country: row.country,
      region: regionCode(row),
      latitudeDeg: rounded(row.latitudeDeg),
      longitudeDeg: rounded(row.longitudeDeg),
      elevationM: row.modelElevationM === NO_ELEVATION ? (row.elevationM ?? 0) : row.modelElevationM,
      population: row.population,
      timeZone: row.timeZone,
    });
  }
  return places;
}

/** "Lyon 03": nobody looks for it, and it would stand before the town itself as the nearest place. */
function isNumberedDistrict({ name, featureCode }: CityRow): boolean {
  return (featureCode === 'PPLX' || featureCode === 'PPLA5') && / \d+$/.test(name);
}

/** To the steps in which degrees are packed, so that all who use the place mean the same point. */
function rounded(degrees: number): number {
  return Math.round(degrees * DEGREE_STEPS) / DEGREE_STEPS;
}

function isAscii(key: string): boolean {
  return /^[a-z0-9 ]*$/.test(key);
}

/** Machine transliterations begin with a small letter; three or four capitals are an airport's code. */
function isNameInLatinLetters(spelling: string): boolean {
  return /^\p{Lu}[\p{Script=Latin}\p{M} .'’ʻ-]{2,39}$/u.test(spelling) && !/^[A-Z]{3,4}$/.test(spelling);
}

/**
 * Whether a spelling shares less than half its letters, in order, with the town's own name (Bombay is near
 * Mumbai, "Hudson" far from Jersey City). Our own rule; a shortened name (Frankfurt) is near.
 */
function isFarFrom(other: string, key: string): boolean {
  if (`${key} `.startsWith(`${other} `)) return false;
  let common = new Array<number>(key.length + 1).fill(0);
  for (const letter of other) {
    const next = [0];
    for (let j = 1; j <= key.length; j++) {
      next[j] = letter === key[j - 1] ? common[j - 1] + 1 : Math.max(common[j], next[j - 1]);
    }
    common = next;
  }
  return common[key.length] * 2 < Math.max(other.length, key.length);
}
