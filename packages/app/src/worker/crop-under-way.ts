import {
  type Belief,
  beliefSite,
  choosePlan,
  type GrowingOptions,
  learnSeason,
  learntSite,
  type Observation,
  onionAt,
  type Plan,
  type PlanAsked,
  planDefaults,
  plantOutFor,
  runPlan,
  type TendedCrop,
} from '@neckfall/engine';
import { beliefAfter } from './belief-after.ts';
import { metSiteOf } from './met-site.ts';
import type { SiteAsked } from './site.ts';
import { surveyAt } from './survey.ts';

export type CropUnderWayAsked = PlanAsked & {
  site: SiteAsked;
  today: number;
  options: GrowingOptions & { plantOutDay?: number | null };
  /** What was seen of the crop. */
  seen: readonly Observation[];
};

/** A crop as it stands: its plan, what was learnt of it, and the site of that; what was not asked is chosen. */
export function cropUnderWay(asked: CropUnderWayAsked) {
  const usual = metSiteOf(asked.site, Number.POSITIVE_INFINITY);
  const { today, seen } = asked;
  const { plantOutDay = null, ...options } = asked.options;
  const chosen = choosePlan(usual, asked, today, options, () => surveyAt(asked.site, today, options));
  const { type, traits, notes } = onionAt(usual, chosen.crop, chosen);
  const plan: Plan = {
    ...planDefaults,
    ...options,
    type,
    traits,
    start: chosen.start,
    startDay: chosen.startDay,
    plantOutDay: plantOutFor(plantOutDay, chosen),
  };
  const met = metSiteOf(asked.site, plan.startDay);
  const belief: Belief | null = beliefAfter(asked.site);
  const learning = learnSeason(met, plan, seen, today, belief);
  return {
    plan,
    notes,
    learning,
    belief,
    /** Before anything was seen of this crop. */
    before: belief ? beliefSite(met, belief) : met,
    site: learntSite(met, learning, belief),
  };
}

/** The crop as its grower tends it. */
export function tendedCrop(
  asked: CropUnderWayAsked & { ground: TendedCrop['ground'] },
  { plan, site, learning } = cropUnderWay(asked),
  summary = runPlan(site, plan),
): TendedCrop {
  const { ground, seen, today } = asked;
  return { site, plan, summary, ground, observations: seen, today, liftedOn: learning.liftedOn };
}
