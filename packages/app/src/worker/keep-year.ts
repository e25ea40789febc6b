import { kitchenKindsOf, ownKitchenKinds, storeLookedAt } from '@neckfall/answers';
import { cultivars } from '@neckfall/data';
import {
  civilDate,
  type Garden,
  type GrowingOptions,
  type Household,
  type KeepProgress,
  type KeepYear,
  keepYearSteps,
  type OwnCultivar,
  type StoreClimate,
  storeClimateOf,
} from '@neckfall/engine';
import type { Work } from './protocol.ts';
import { type SiteAsked, siteOf } from './site.ts';

export type KeepYearAsked = {
  site: SiteAsked;
  household: Household;
  /** ISO alpha-2 code, for what shops have there. */
  country: string | null;
  /** Onions of the grower's own. */
  own: readonly OwnCultivar[];
  /** With what was looked at in store. */
  garden: Garden;
  /** Ids of the places of the garden that are here. */
  places: readonly string[];
  today: number;
  options: GrowingOptions;
};

/** A kitchen's year, and the air of the store that it counts with. */
export type KeepAhead = { year: KeepYear; store: StoreClimate };

const mostKept = 4;
const kept = new Map<string, KeepAhead>();

/** Plans a kitchen's year; tells how far it has come, and gives way to what else is asked. */
export async function keepYear(asked: KeepYearAsked, work: Work<KeepProgress>): Promise<KeepAhead> {
  // days gone by say nothing of starts to come
  const { weather: _, climate, ...ground } = asked.site;
  const { household, country, own, garden, places, today, options } = asked;
  const { latitudeDeg, longitudeDeg, elevationM } = climate;
  const at = [latitudeDeg, longitudeDeg, elevationM];
  const key = JSON.stringify([at, ground, household, country, own, garden, places, today, options]);
  const known = kept.get(key);
  if (known) return known;
  const site = siteOf({ climate, ...ground });
  const kinds = [...ownKitchenKinds(own, site, civilDate(today).year), ...kitchenKindsOf(cultivars, country)];
  const store = storeClimateOf(site.climate, household.store);
  const looked = places.flatMap((id) => storeLookedAt(garden, { id }, store, today));
  const steps = keepYearSteps(site, kinds, household, today, options, looked);
  let step = steps.next();
  for (; !step.done; step = steps.next()) {
    work.part(step.value);
    await work.pause();
  }
  const answer = { year: step.value, store };
  kept.set(key, answer);
  for (const oldest of kept.keys()) {
    if (kept.size <= mostKept) break;
    kept.delete(oldest);
  }
  return answer;
}
