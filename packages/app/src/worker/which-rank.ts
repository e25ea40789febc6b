import { type Choice, type GrownKind, rankChoices } from '@neckfall/engine';
import { type SiteAsked, siteOf } from './site.ts';

export type WhichRankAsked = { site: SiteAsked; grown: readonly GrownKind[] };

/** Puts grown kinds in order, best first. */
export function whichRank({ site, grown }: WhichRankAsked): Choice[] {
  return rankChoices(siteOf(site), grown);
}
