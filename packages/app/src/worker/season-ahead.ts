import { cropYear, type PlaceYear, placeYear, type StandOn, standOn } from '@neckfall/answers';
import {
  beliefSite,
  type ColdBed,
  choosePlan,
  coldBed,
  type DayRow,
  type GrowingOptions,
  type LeafCheckpoint,
  type LearntSeason,
  leafCheckpoint,
  learnSeason,
  learntSite,
  medianSeasonDays,
  neededSunUpH,
  type Observation,
  onionAt,
  type PacketNote,
  type Plan,
  type PlanAsked,
  planDefaults,
  plantOutFor,
  runPlan,
  type SeasonSummary,
  type SpanParts,
  spanParts,
} from '@neckfall/engine';
import { beliefAfter } from './belief-after.ts';
import { metSiteOf } from './met-site.ts';
import type { SiteAsked } from './site.ts';
import { surveyAt } from './survey.ts';

export type SeasonAheadAsked = PlanAsked & {
  site: SiteAsked;
  today: number;
  options: GrowingOptions & { plantOutDay?: number | null };
  /** What was seen of the crop. */
  seen: readonly Observation[];
};

export type SeasonAhead = {
  summary: SeasonSummary;
  /** The middling season, from the day plants stand in the bed. */
  days: DayRow[];
  /** What was made of a packet. */
  notes: PacketNote[];
  /** Where the start comes while beds are too cold. */
  cold: ColdBed | null;
  stand: StandOn;
  /** What to count of leaves, and when. */
  leafCheckpoint: LeafCheckpoint | null;
  spans: SpanParts;
  year: PlaceYear;
  needSunUpH: number;
  /** What was learnt of it; null where nothing was seen and it starts from the usual. */
  learnt: Learnt | null;
};

/** Without the hundreds of seasons that it rests on; beside it what was to be expected in the same weather before. */
type Learnt = {
  season: LearntSeason;
  expected: SeasonSummary;
  /** Whether earlier seasons have told of it. */
  hasEarlier: boolean;
};

/** A season of one crop, with what should be seen of it today; what was not asked is chosen. */
export function seasonAhead(asked: SeasonAheadAsked): SeasonAhead {
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
  const belief = beliefAfter(asked.site);
  const before = belief ? beliefSite(met, belief) : met;
  const learning = learnSeason(met, plan, seen, today, belief);
  const site = learntSite(met, learning, belief);
  const summary = runPlan(site, plan);
  const days = medianSeasonDays(site, plan);
  const { climate } = site;
  const shown = cropYear(plan.startDay, days.at(-1)?.day ?? plan.startDay);
  return {
    summary,
    days,
    notes,
    cold: coldBed(site, plan.start, plan.startDay),
    stand: standOn(site, plan, today, days),
    leafCheckpoint: leafCheckpoint(site, summary),
    spans: spanParts(site, summary),
    year: placeYear(climate, shown.firstDay, shown.days),
    needSunUpH: neededSunUpH(site, summary.needPhotoperiodH),
    learnt:
      seen.length > 0 || belief !== null
        ? {
            season: { ...learning, seasons: null },
            expected: runPlan(before, plan),
            hasEarlier: belief !== null,
          }
        : null,
  };
}
