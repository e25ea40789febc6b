import { offerOfOwn } from '@neckfall/answers';
import {
  civilDate,
  type DayNumber,
  eatFirst,
  type Observation,
  type OwnCultivar,
  type StoredNow,
  type StoreSaid,
  storeClimateOf,
  storedNow as storedNowOf,
  thickWhenRipe,
  usualBruised,
} from '@neckfall/engine';
import { type SiteAsked, siteOf } from './site.ts';

/** A planting that was lifted; `onion` as far as it is known, with how long it usually keeps. */
export type LiftedPlanting = { id: string; onion: OwnCultivar; liftedOn: DayNumber };

export type StoredNowAsked = {
  site: SiteAsked;
  store: StoreSaid;
  plantings: readonly LiftedPlanting[];
  observations: readonly Observation[];
  today: DayNumber;
};

/** What is left of what was lifted, in the order in which to eat it. */
export function storedNow({ site: at, store, plantings, observations, today }: StoredNowAsked): StoredNow[] {
  const { weather: _, ...ground } = at;
  const site = siteOf(ground);
  const climate = storeClimateOf(site.climate, store);
  const lotOf = (onion: OwnCultivar, liftedOn: DayNumber) => ({
    keepsMonths: onion.keepsMonths ?? offerOfOwn(onion, site, civilDate(liftedOn).year).keepsMonths,
    thickNeckShare: thickWhenRipe,
    bruisedShare: usualBruised,
  });
  const stored = plantings.flatMap(({ id, onion, liftedOn }) => {
    const planting = { plantingId: id, lot: lotOf(onion, liftedOn), store: climate, liftedOn };
    return storedNowOf(planting, observations, today, { seasons: site.years, seed: site.seed }) ?? [];
  });
  const order = eatFirst(stored.map((of) => ({ ...of, thickNeckShare: thickWhenRipe })));
  return order.flatMap(({ plantingId }) => stored.find((of) => of.plantingId === plantingId) ?? []);
}
