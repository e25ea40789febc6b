import { choosePlan, type GrowingOptions, type PlanAsked, type PlanChosen } from '@neckfall/engine';
import { grownSiteOf } from './grown-site.ts';
import type { SiteAsked } from './site.ts';
import { surveyAt } from './survey.ts';

export type WhenChoiceAsked = Pick<PlanAsked, 'crop' | 'starts'> & {
  site: SiteAsked;
  today: number;
  options: GrowingOptions;
};

/** The onion and the way of starting that are taken where the reader has said nothing. */
export function whenChoice({
  site,
  crop,
  starts,
  today,
  options,
}: WhenChoiceAsked): Pick<PlanChosen, 'crop' | 'start'> {
  const asked = { crop, starts, start: null, startDay: null };
  const chosen = choosePlan(grownSiteOf(site), asked, today, options, () => surveyAt(site, today, options));
  return { crop: chosen.crop, start: chosen.start };
}
