import {
  type CropAsked,
  cropAt,
  type DayRow,
  medianSeasonDays,
  type Plan,
  planDefaults,
  runPlan,
  type SeasonSummary,
} from '@neckfall/engine';
import { grownSiteOf } from './grown-site.ts';
import type { SiteAsked } from './site.ts';

export type SeasonAsked = {
  site: SiteAsked;
  crop: CropAsked;
  plan: Pick<Plan, 'start' | 'startDay'> & Partial<Omit<Plan, 'type' | 'traits'>>;
  /** Whether the middling season is wanted day by day. */
  days: boolean;
};
export type SeasonReply = { summary: SeasonSummary; days: DayRow[] };

/** One crop over many years of weather. */
export function season({ site: asked, crop, plan: chosen, days }: SeasonAsked): SeasonReply {
  const site = grownSiteOf(asked, chosen.startDay);
  const plan = { ...planDefaults, ...chosen, ...cropAt(site, crop, chosen) };
  return { summary: runPlan(site, plan), days: days ? medianSeasonDays(site, plan) : [] };
}
