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
import { lastFew } from './last-few.ts';
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

/** A page asks for one crop, and for that at two other spacings. */
const kept = lastFew<ReturnType<typeof workOut>>(4);

/**
 * A crop as it stands: its plan, what was learnt of it, the site of that and its seasons; what was not asked is chosen.
 * Worked out once for all that is asked of it.
 */
export function cropUnderWay(asked: CropUnderWayAsked) {
  return kept(cropKey(asked), () => workOut(asked));
}

/** Tells a crop as it stands from any other; weather is known by its mark. */
export function cropKey(asked: CropUnderWayAsked): string {
  const { site, crop, starts, start, startDay, today, options, seen } = asked;
  const { weather = null, ...ground } = site;
  const met = weather && [weather.key, weather.lastStart];
  return JSON.stringify([met, ground, crop, starts, start, startDay, today, options, seen]);
}

function workOut(asked: CropUnderWayAsked) {
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
  const site = learntSite(met, learning, belief);
  return {
    plan,
    notes,
    learning,
    belief,
    /** Before anything was seen of this crop. */
    before: belief ? beliefSite(met, belief) : met,
    site,
    summary: runPlan(site, plan),
  };
}

/** The crop as its grower tends it. */
export function tendedCrop(asked: CropUnderWayAsked & { ground: TendedCrop['ground'] }): TendedCrop {
  const { plan, site, learning, summary } = cropUnderWay(asked);
  const { ground, seen, today } = asked;
  return { site, plan, summary, ground, observations: seen, today, liftedOn: learning.liftedOn };
}
