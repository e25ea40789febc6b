import { type GrowingOptions, type Kind, type KindNow, kindNow } from '@neckfall/engine';
import { type SiteAsked, siteOf } from './site.ts';

export type WhichNowAsked = {
  site: SiteAsked;
  /** In the order in which they are told. */
  kinds: readonly Pick<Kind, 'type' | 'traits' | 'start'>[];
  today: number;
  options: GrowingOptions;
};

/** The first of some kinds that is in time today. */
export function whichNow({ site, kinds, today, options }: WhichNowAsked): KindNow | null {
  return kindNow(siteOf(site), kinds, today, options);
}
