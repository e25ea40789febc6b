import { cropYear, type PlaceYear, placeYear, type StandOn, standOn } from '@neckfall/answers';
import {
  type ColdBed,
  coldBed,
  type DayRow,
  type Ground,
  type Job,
  type JobMark,
  jobsOf,
  type Kept,
  type LeafCheckpoint,
  type LearntSeason,
  leafCheckpoint,
  medianSeasonDays,
  neededSunUpH,
  type PacketNote,
  runPlan,
  type SeasonSummary,
  type SpanParts,
  type StoreSaid,
  spanParts,
  storeClimateOf,
  tendOf,
} from '@neckfall/engine';
import { type CropUnderWayAsked, cropKey, cropUnderWay, tendedCrop } from './crop-under-way.ts';

export type SeasonAheadAsked = CropUnderWayAsked & {
  ground: Ground;
  /** What became of its work. */
  marks: readonly JobMark[];
  keepsMonths: Kept['keepsMonths'];
  store: StoreSaid;
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
  /** All its work by day, what is done and gone by included. */
  jobs: Job[];
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

type Known = { key: string; tended: ReturnType<typeof tendOf>; ahead: Omit<SeasonAhead, 'jobs'> };

/** The crop asked for last: what became of its work changes nothing of it, and is said with one finger. */
let last: Known | null = null;

/** A season of one crop, with what should be seen of it today and what to do; what was not asked is chosen. */
export function seasonAhead({ marks, ...asked }: SeasonAheadAsked): SeasonAhead {
  const { ground, keepsMonths, store } = asked;
  const key = cropKey(asked) + JSON.stringify([ground, keepsMonths, store]);
  if (last?.key !== key) last = { key, ...cropAhead(asked) };
  const { tended, ahead } = last;
  return { ...ahead, jobs: jobsOf({ ...tended, marks }) };
}

function cropAhead(asked: Omit<SeasonAheadAsked, 'marks'>): Omit<Known, 'key'> {
  const { today, seen } = asked;
  const { plan, notes, learning, belief, before, site, summary } = cropUnderWay(asked);
  const days = medianSeasonDays(site, plan);
  const { climate } = site;
  const shown = cropYear(plan.startDay, days.at(-1)?.day ?? plan.startDay);
  const ahead = {
    summary,
    days,
    notes,
    cold: coldBed(site, plan.start, plan.startDay),
    stand: standOn(site, plan, today),
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
  const kept = { keepsMonths: asked.keepsMonths, store: storeClimateOf(climate, asked.store) };
  return { tended: tendOf(tendedCrop(asked), kept), ahead };
}
