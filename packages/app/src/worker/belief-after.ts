import {
  type Belief,
  type CropAsked,
  cropAt,
  type GrowingOptions,
  learnSeason,
  type Observation,
  type Plan,
  planDefaults,
  plantOutFor,
  type Site,
} from '@neckfall/engine';
import { type SiteAsked, siteOf } from './site.ts';

/** A season of which something was seen, as its garden has it. */
export type EarlierSeason = {
  crop: CropAsked;
  plan: Pick<Plan, 'start' | 'startDay'> & GrowingOptions & { plantOutDay?: number | null };
  seen: readonly Observation[];
};

/** Beliefs of each site by the seasons that they rest on; they go with their sites. */
const kept = new WeakMap<Site, Map<string, Belief | null>>();

/** What earlier seasons, one after the other and each in the weather that came, told of the onion here; null: none. */
export function beliefAfter(asked: SiteAsked): Belief | null {
  const { earlier = [] } = asked;
  if (earlier.length === 0) return null;
  // what is in the hand now says nothing of what was grown
  const site = siteOf({ ...asked, atHand: [] });
  const known = kept.get(site) ?? new Map<string, Belief | null>();
  kept.set(site, known);
  const key = JSON.stringify(earlier);
  let belief = known.get(key) ?? null;
  if (known.has(key)) return belief;
  for (const { crop, plan: chosen, seen } of earlier) {
    const plantOutDay = plantOutFor(chosen.plantOutDay ?? null, chosen);
    const plan = { ...planDefaults, ...chosen, plantOutDay, ...cropAt(site, crop, chosen) };
    belief = learnSeason(site, plan, seen, Number.POSITIVE_INFINITY, belief).belief;
  }
  known.set(key, belief);
  return belief;
}
