import { beliefSite, type Site } from '@neckfall/engine';
import { beliefAfter } from './belief-after.ts';
import { type SiteAsked, siteOf } from './site.ts';

/** The site as it is for the onion grown there, of which earlier seasons may have told. */
export function grownSiteOf(asked: SiteAsked): Site {
  const site = siteOf(asked);
  const belief = beliefAfter(site, asked.earlier ?? []);
  return belief ? beliefSite(site, belief) : site;
}
