import { whatMovesIt as moves, type Plan, type Pull } from '@neckfall/engine';
import { type SiteAsked, siteOf } from './site.ts';

/** What the end of this crop hangs on most here; null where its tops don't go over. */
export function whatMovesIt({ site, plan }: { site: SiteAsked; plan: Plan }): Pull[] | null {
  return moves(siteOf(site), plan);
}
