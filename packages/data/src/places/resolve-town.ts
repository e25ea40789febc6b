import { countryCalled } from './countries.ts';
import { misspeltTowns } from './find-towns.ts';
import { foldName } from './fold-name.ts';
import { type Gazetteer, townAt } from './gazetteer.ts';
import { keyBytes, prefixRows } from './key-table.ts';
import { nameTables, rankedTowns } from './ranked-towns.ts';
import { isAnyRegion, isRegionCalled } from './regions.ts';
import type { Town } from './town.ts';

/** `others` have the same name and are less populous; `nearest` are the best guesses at what was meant. */
export type TownAnswer =
  | { readonly kind: 'found'; readonly town: Town; readonly others: readonly Town[] }
  | {
      readonly kind: 'unknown';
      /** No town so called; or none in that country or region; or what follows the comma names neither. */
      readonly reason: 'name' | 'not-in-area' | 'area';
      readonly nearest: readonly Town[];
    };

const NEAREST_OFFERED = 5;

/**
 * The town meant by `Lyon`, `Springfield, US`, `Springfield, United States`, `Springfield, IL` or
 * `Springfield, Illinois`: an exact name or other spelling, accents and case ignored, the most populous first.
 * Letters that are both a country and a region (`IN`) mean the country first; towns in the region are others.
 */
export function resolveTown(gazetteer: Gazetteer, text: string): TownAnswer {
  const whole = townsCalled(gazetteer, text);
  if (whole.length > 0) return found(whole);
  const comma = text.lastIndexOf(',');
  const name = text.slice(0, comma);
  const area = text.slice(comma + 1);
  if (comma < 0 || foldName(area) === '') return unknown('name', misspellingsOf(gazetteer, text));

  const country = countryCalled(gazetteer, area);
  const isInCountry = (town: Town) => town.country === country;
  const isInRegion = (town: Town) => !isInCountry(town) && isRegionCalled(town.country, town.region, area);
  const inArea = (towns: readonly Town[]) => [...towns.filter(isInCountry), ...towns.filter(isInRegion)];

  const called = townsCalled(gazetteer, name);
  const calledThere = inArea(called);
  if (calledThere.length > 0) return found(calledThere);
  const misspelt = misspellingsOf(gazetteer, name);
  if (country === null && !isAnyRegion(gazetteer, area)) {
    return unknown('area', called.length > 0 ? called : misspelt);
  }
  const misspeltThere = inArea(misspelt);
  if (called.length > 0) return unknown('not-in-area', [...misspeltThere, ...called]);
  return unknown('name', misspeltThere.length > 0 ? misspeltThere : misspelt);
}

function found([town, ...others]: readonly Town[]): TownAnswer {
  return { kind: 'found', town, others };
}

function unknown(reason: 'name' | 'not-in-area' | 'area', nearest: readonly Town[]): TownAnswer {
  return { kind: 'unknown', reason, nearest: nearest.slice(0, NEAREST_OFFERED) };
}

function townsCalled(gazetteer: Gazetteer, name: string): Town[] {
  const bytes = keyBytes(foldName(name));
  if (bytes === null) return [];
  const { offer, best } = rankedTowns(gazetteer.townCount);
  for (const { keys, townOf, weightOf } of nameTables(gazetteer)) {
    const { from, exactTo } = prefixRows(keys, bytes);
    for (let row = from; row < exactTo; row++)
      offer({ town: townOf(row), distance: 0, weight: weightOf(row) });
  }
  return best.map(({ town }) => townAt(gazetteer, town));
}

function misspellingsOf(gazetteer: Gazetteer, name: string): Town[] {
  const bytes = keyBytes(foldName(name));
  if (bytes === null) return [];
  // Some are dropped where a country was named, so more are taken than are offered.
  return misspeltTowns(nameTables(gazetteer), bytes, 'whole', 100).map(({ town }) => townAt(gazetteer, town));
}
