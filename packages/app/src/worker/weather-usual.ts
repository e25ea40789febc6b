import { inFrostHollow, meanYear, type WeatherSeries, warmed } from '@neckfall/engine';
import type { SiteAsked } from './site.ts';

/** What is usual at a place on each of 365 days, the warming since its normals included. */
export function weatherUsual({ climate, frostHollow, warmerC }: SiteAsked): WeatherSeries {
  return meanYear(warmed(frostHollow ? inFrostHollow(climate) : climate, warmerC));
}
