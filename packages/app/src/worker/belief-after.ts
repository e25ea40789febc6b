import {
  type Belief,
  type CropAsked,
  cropAt,
  type GrowingOptions,
  learnSeason,
  type Observation,
  type Plan,
  planDefaults,
  type Site,
} from '@neckfall/engine';

/** A season of which something was seen, as its garden has it. */
export type EarlierSeason = {
  crop: CropAsked;
  plan: Pick<Plan, 'start' | 'startDay'> & GrowingOptions & { plantOutDay?: number | null };
  seen: readonly Observation[];
};

/** Beliefs of each site by the seasons that they rest on; they go with their sites. */
const kept = new WeakMap<Site, Map<string, Belief>>();

/** What seasons, one after the other, told of an onion at a place; null where there were none. */
export function beliefAfter(site: Site, seasons: readonly EarlierSeason[]): Belief | null {
  if (seasons.length === 0) return null;
  const known = kept.get(site) ?? new Map<string, Belief>();
  kept.set(site, known);
  const key = JSON.stringify(seasons);
  let belief = known.get(key) ?? null;
  if (belief) return belief;
  for (const { crop, plan: chosen, seen } of seasons) {
    const plan = { ...planDefaults, ...chosen, ...cropAt(site, crop, chosen) };
    belief = learnSeason(site, plan, seen, Number.POSITIVE_INFINITY, belief).belief;
  }
  if (belief) known.set(key, belief);
  return belief;
}
