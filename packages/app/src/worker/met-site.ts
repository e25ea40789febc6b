import type { Site } from '@neckfall/engine';
import { type SiteAsked, siteOf } from './site.ts';

/**
 * The site as a crop meets it: one that was started lives through the weather that came. Of a start to come the days gone
 * by say nothing, so that it is answered as on every page, which all try starts to come.
 */
export function metSiteOf(asked: SiteAsked, startDay: number): Site {
  const { weather = null, ...usual } = asked;
  return siteOf(weather !== null && startDay <= weather.lastStart ? asked : usual);
}
