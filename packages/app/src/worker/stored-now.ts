import { inStoreOf, type NamedStore, storedInOrder } from '@neckfall/answers';
import { type Garden, type StoreSaid, storeClimateOf } from '@neckfall/engine';
import { type SiteAsked, siteOf } from './site.ts';

export type StoredNowAsked = {
  site: SiteAsked;
  store: StoreSaid;
  garden: Garden;
  /** Ids of the places of the garden that are here. */
  places: readonly string[];
  today: number;
};

/** What is left of what was lifted, in the order in which to eat it. */
export function storedNow({ site: asked, store, garden, places, today }: StoredNowAsked): NamedStore[] {
  const { weather: _, ...ground } = asked;
  const site = siteOf(ground);
  const climate = storeClimateOf(site.climate, store);
  const tried = { seasons: site.years, seed: site.seed };
  return storedInOrder(places.flatMap((id) => inStoreOf(garden, { id }, climate, today, tried)));
}
