import { type OpenPlan, planDefaults, tryStarts, type WhenAnswer } from '@neckfall/engine';
import { type CropAsked, cropAt } from './crop.ts';
import { type SiteAsked, siteOf } from './site.ts';

export type WhenAsked = {
  site: SiteAsked;
  crop: CropAsked;
  /** The year whose 52 weeks are tried. */
  year: number;
  plan: Pick<OpenPlan, 'start'> & Partial<Omit<OpenPlan, 'type' | 'traits'>>;
};

/** The year tried week by week. */
export function when({ site: asked, crop, year, plan }: WhenAsked): WhenAnswer {
  const site = siteOf(asked);
  return tryStarts(site, { ...planDefaults, ...plan, ...cropAt(site, crop) }, year);
}
