import { type PlaceYear, placeYear } from '@neckfall/answers';
import { type SiteAsked, siteOf } from './site.ts';

export type WhenYearAsked = { site: SiteAsked; firstDay: number; days: number };

/** A place's year from any day on, for the year line. */
export function whenYear({ site, firstDay, days }: WhenYearAsked): PlaceYear {
  return placeYear(siteOf(site).climate, firstDay, days);
}
