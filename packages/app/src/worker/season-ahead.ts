import {
  cropYear,
  type PlaceYear,
  placeYear,
  type StandOn,
  standOn,
  sunUpAtPhotoperiod,
} from '@neckfall/answers';
import {
  type ColdBed,
  chooseKinds,
  coldBed,
  type DayRow,
  kindsOf,
  type LeafCheckpoint,
  leafCheckpoint,
  medianSeasonDays,
  type PacketNote,
  type Plan,
  planDefaults,
  runPlan,
  type SeasonSummary,
  type Site,
  type SpanParts,
  type StartMethod,
  type SurveyOptions,
  spanParts,
} from '@neckfall/engine';
import { type CropAsked, onionAt } from './crop.ts';
import { longestNurseryDays } from './nursery-days.ts';
import { type SiteAsked, siteOf } from './site.ts';
import { surveyAt } from './survey.ts';

export type SeasonAheadAsked = {
  site: SiteAsked;
  /** Null: whichever suits the place best. */
  crop: CropAsked | null;
  /** Ways in which the onion can be started. */
  starts: readonly StartMethod[];
  /** Null: the best. */
  start: StartMethod | null;
  startDay: number | null;
  today: number;
  options: SurveyOptions & { plantOutDay?: number | null };
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
  const { today, options } = asked;
  const chosen = choose(site, asked);
  const { type, traits, notes } = onionAt(site, chosen.crop, chosen);
  const plan: Plan = {
    ...planDefaults,
    ...options,
    type,
    traits,
    start: chosen.start,
    startDay: chosen.startDay,
    plantOutDay: plantOutOf(asked, chosen),
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
    needSunUpH: sunUpAtPhotoperiod(climate.latitudeDeg, climate.longitudeDeg, summary.needPhotoperiodH),
  };
}

type Chosen = { crop: CropAsked; start: StartMethod; startDay: number };

function choose(
  site: Site,
  { site: ground, crop, starts, start, startDay, today, options }: SeasonAheadAsked,
): Chosen {
  if (crop !== null && start !== null && startDay !== null) return { crop, start, startDay };
  const { plantOutDay: _, ...survey } = options;
  let onion = crop;
  if (onion === null) {
    const best = surveyAt(ground, today, survey).lead();
    onion = { class: best.class };
    if (start === null && startDay === null)
      return { crop: onion, start: best.bestStart, startDay: best.summary.plan.startDay };
  }
  const { type, traits } = onionAt(site, onion);
  const ways = start === null ? starts : [start];
  const offer = { name: '', type, traits, starts: ways, keepsMonths: [0, 0], keepsFrom: 'type' } as const;
  const [best] = chooseKinds(site, kindsOf([offer]), today, survey) ?? [];
  return {
    crop: onion,
    start: start ?? best?.kind.start ?? starts[0],
    startDay: startDay ?? best?.summary.plan.startDay ?? today,
  };
}

/** A day for planting out goes with raised seedlings, and comes after the sowing. */
function plantOutOf({ options }: SeasonAheadAsked, { start, startDay }: Chosen): number | null {
  const day = options.plantOutDay ?? null;
  return start === 'raised-seedlings' &&
    day !== null &&
    day > startDay &&
    day <= startDay + longestNurseryDays
    ? day
    : null;
}
