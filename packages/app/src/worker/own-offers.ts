import { offerOfOwn } from '@neckfall/answers';
import type { Offer, OwnCultivar } from '@neckfall/engine';
import { type SiteAsked, siteOf } from './site.ts';

export type OwnOffersAsked = {
  site: SiteAsked;
  /** Each with its kind or a day length. */
  own: readonly OwnCultivar[];
  /** That of the starts, in which days to maturity count. */
  year: number;
};

/** Onions of the grower's own as they may be chosen among at this place. */
export function ownOffers({ site: asked, own, year }: OwnOffersAsked): Offer[] {
  const site = siteOf(asked);
  return own.map((onion) => offerOfOwn(onion, site, year));
}
