import { findTowns as find, foldName, type Gazetteer, nearbyLarger, type Town } from '@neckfall/data';
import { allTowns, hasSmallTowns, largeTowns } from './assets.ts';
import type { Work } from './protocol.ts';

/** A town to choose, with a larger one nearby where others share its name. */
type TownOffer = { town: Town; near: string | null };
export type TownOffers = {
  offers: TownOffer[];
  /** Only a postal code was typed, of which nothing is known. */
  isPostcode: boolean;
};

const mostOffers = 8;

/**
 * Towns for what is typed, likeliest first. Large towns come at once; where none begins so, the small ones are
 * fetched and looked through before the answer is whole.
 */
export async function findTowns({ query }: { query: string }, work: Work<TownOffers>): Promise<TownOffers> {
  if (hasSmallTowns()) return offersFor(await allTowns(), query);
  const large = await largeTowns();
  const { towns, fit } = find(large, query, mostOffers);
  if (fit === 'called' || fit === 'postcode' || foldName(query).length < 3) {
    return { offers: offersOf(large, towns), isPostcode: fit === 'postcode' };
  }
  work.part({ offers: offersOf(large, towns), isPostcode: false });
  await work.pause();
  return offersFor(await allTowns(), query);
}

function offersFor(gazetteer: Gazetteer, query: string): TownOffers {
  const { towns, fit } = find(gazetteer, query, mostOffers);
  return { offers: offersOf(gazetteer, towns), isPostcode: fit === 'postcode' };
}

function offersOf(gazetteer: Gazetteer, towns: readonly Town[]): TownOffer[] {
  const labels = towns.map(labelKey);
  return towns.map((town, at) => ({
    town,
    near: labels.some((label, other) => other !== at && label === labels[at])
      ? (nearbyLarger(gazetteer, town)?.name ?? null)
      : null,
  }));
}

const labelKey = ({ name, country, region }: Town) =>
  [name, country, country === 'US' ? region : ''].join('|');

/** Fetches the small towns while nothing else is asked, so that they are there when the network is not. */
export async function loadSmallTowns(): Promise<{ loaded: true }> {
  await allTowns();
  return { loaded: true };
}
