import { beliefSite, type Site } from '@neckfall/engine';
import { beliefAfter } from './belief-after.ts';
import { metSiteOf } from './met-site.ts';
import type { SiteAsked } from './site.ts';

const toCome = Number.POSITIVE_INFINITY;

/** The site as it is for an onion of which earlier seasons there may have told. @param startDay left out: starts to come */
export function grownSiteOf(asked: SiteAsked, startDay: number = toCome): Site {
  const site = metSiteOf(asked, startDay);
  const belief = beliefAfter(asked);
  return belief ? beliefSite(site, belief) : site;
}
