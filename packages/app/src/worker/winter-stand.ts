import { type GrowingOptions, winterStand as standOf, type WinterStand } from '@neckfall/engine';
import { type SiteAsked, siteOf } from './site.ts';

export type WinterAsked = { site: SiteAsked; today: number; options: GrowingOptions };

/** Whether young plants sown in autumn come through the winter. */
export function winterStand({ site, today, options }: WinterAsked): WinterStand {
  return standOf(siteOf(site), today, options);
}
