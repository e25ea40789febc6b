import { cropYear, type PlaceYear, placeYear, type StandOn, standOn } from '@neckfall/answers';
import {
  type ColdBed,
  choosePlan,
  coldBed,
  type DayRow,
  type GrowingOptions,
  type LeafCheckpoint,
  leafCheckpoint,
  medianSeasonDays,
  neededSunUpH,
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
import { type SiteAsked, siteOf } from './site.ts';
import { surveyAt } from './survey.ts';

export type SeasonAheadAsked = PlanAsked & {
  site: SiteAsked;
  today: number;
  options: GrowingOptions & { plantOutDay?: number | null };
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
};

/** A season of one crop, with what should be seen of it today; what was not asked is chosen. */
export function seasonAhead(asked: SeasonAheadAsked): SeasonAhead {
  const site = siteOf(asked.site);
  const { today } = asked;
  const { plantOutDay = null, ...options } = asked.options;
  const chosen = choosePlan(site, asked, today, options, () => surveyAt(asked.site, today, options));
  const { type, traits, notes } = onionAt(site, chosen.crop, chosen);
  const plan: Plan = {
    ...planDefaults,
    ...options,
    type,
    traits,
    start: chosen.start,
    startDay: chosen.startDay,
    plantOutDay: plantOutFor(plantOutDay, chosen),
  };
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
  };
}
