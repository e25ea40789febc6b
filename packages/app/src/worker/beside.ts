import { placeFacts, type Told, toldOf } from '@neckfall/answers';
import {
  type CropAsked,
  classOfType,
  cropAt,
  type DayLengthClass,
  type DayRow,
  type GrowingOptions,
  medianSeasonDays,
  neededSunUpH,
  planDefaults,
  runPlan,
  type SeasonSummary,
  type StartMethod,
  startMethods,
  surveyWays,
  waysOf,
} from '@neckfall/engine';
import { type SiteAsked, siteOf } from './site.ts';
import { surveyAt } from './survey.ts';

export type BesideAsked = {
  site: SiteAsked;
  today: number;
  options: GrowingOptions;
  /** What stands on the line; null: what does best at the place, started as and when it does. */
  crop: CropAsked | null;
  /** How that is started; null: as it does best. */
  start: StartMethod | null;
  /** And when; null: on its best day. */
  startDay: number | null;
};

export type BesideReply = {
  told: Told;
  class: DayLengthClass;
  /** The middling season. */
  days: DayRow[];
  needSunUpH: number;
  /** Sun-up hours of the longest and the shortest day. */
  longestH: number;
  shortestH: number;
  /** Mean coldest night of a year, °C. */
  coldestC: number;
};

/** One of the lines that are set beside each other: the best of a place as Where has it, or one crop as Season has it. */
export function beside(asked: BesideAsked): BesideReply {
  const site = siteOf(asked.site);
  const summary = summaryOf(asked);
  const { sunUpH, frost } = placeFacts(site, asked.today);
  return {
    told: toldOf(summary),
    class: classOfType[summary.plan.type],
    days: medianSeasonDays(site, summary.plan),
    needSunUpH: neededSunUpH(site, summary.needPhotoperiodH),
    longestH: Math.max(...sunUpH),
    shortestH: Math.min(...sunUpH),
    coldestC: frost.meanAnnualMinimumC,
  };
}

function summaryOf({ site: asked, today, options, crop, start, startDay }: BesideAsked): SeasonSummary {
  if (crop === null) return surveyAt(asked, today, options).lead().summary;
  const site = siteOf(asked);
  if (start !== null && startDay !== null) {
    const chosen = { start, startDay };
    return runPlan(site, { ...planDefaults, ...options, ...chosen, ...cropAt(site, crop, chosen) });
  }
  const ways = waysOf(site, crop, start === null ? startMethods : [start]);
  return surveyWays(site, ways, today, options).best().summary;
}
