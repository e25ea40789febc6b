import { findTowns as find, foldName, type Gazetteer, nearbyLarger, type Town } from '@neckfall/data';
import type { Work } from '../ask/protocol.ts';
import { allTowns, hasSmallTowns, largeTowns } from './assets.ts';

/** A town to choose, with a larger one nearby where others share its name. */
export type TownOffer = { town: Town; near: string | null };
export type TownOffers = {
  offers: TownOffer[];
  /** Whether towns of fewer than 15,000 people were looked through as well. */
  smallToo: boolean;
};

const mostOffers = 8;

/**
 * Towns for what is typed, likeliest first. Large towns come at once; where none begins so, the small ones are
 * fetched and looked through before the answer is whole.
 */
export async function findTowns({ query }: { query: string }, work: Work<TownOffers>): Promise<TownOffers> {
  const known = await (hasSmallTowns() ? allTowns() : largeTowns());
  const offers = offersFor(known, query);
  const typed = foldName(query);
  const isFound = offers.some(({ town }) => foldName(town.name).startsWith(typed));
  if (hasSmallTowns() || isFound || typed.length < 3) return { offers, smallToo: hasSmallTowns() };
  work.part({ offers, smallToo: false });
  await work.pause();
  return { offers: offersFor(await allTowns(), query), smallToo: true };
}

function offersFor(gazetteer: Gazetteer, query: string): TownOffer[] {
  // "Springfield, Illinois": the name is looked up, the rest sorts
  const [name, ...area] = query.split(',');
  const towns = find(gazetteer, name, area.length > 0 ? 60 : mostOffers);
  const wanted = foldName(area.join(' '));
  const sorted =
    wanted === ''
      ? towns
      : [...towns.filter((town) => isIn(town, wanted)), ...towns.filter((town) => !isIn(town, wanted))];
  const shown = sorted.slice(0, mostOffers);
  const labels = shown.map(labelKey);
  return shown.map((town, at) => ({
    town,
    near: labels.some((label, other) => other !== at && label === labels[at])
      ? (nearbyLarger(gazetteer, town)?.name ?? null)
      : null,
  }));
}

const labelKey = ({ name, country, region }: Town) =>
  [name, country, country === 'US' ? region : ''].join('|');

const regionNames = new Intl.DisplayNames('en', { type: 'region' });

function isIn({ country, region }: Town, wanted: string): boolean {
  const names = [country, regionNames.of(country) ?? '', region ?? ''].map(foldName);
  return names.some((name) => name.startsWith(wanted));
}

/** Fetches the small towns while nothing else is asked, so that they are there when the network is not. */
export async function loadSmallTowns(): Promise<{ loaded: true }> {
  await allTowns();
  return { loaded: true };
}
