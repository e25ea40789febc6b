import { type DayNumber, parseDay } from '../calendar/index.ts';
import type { JobMark, Observation } from '../garden/index.ts';
import type { LiftAdvice, StoreClimate } from '../keep/index.ts';
import { type DateSpread, runnerOf, type Spread } from '../season/index.ts';
import { type FeedAnswer, leafDates, type TendedCrop, type WaterAnswer } from '../tend/index.ts';
import type { Due } from './due.ts';

/** How a crop will be kept: usual keeping of its kind in months, and the air of its store. */
export type Kept = { keepsMonths: readonly [number, number]; store: StoreClimate };

/** What work on a crop rests on. */
export type JobGrounds = {
  crop: TendedCrop;
  water: WaterAnswer | null;
  feed: FeedAnswer | null;
  /** Null while its tops are far from falling, and where no bulbs come. */
  lift: LiftAdvice | null;
  kept: Kept;
  /** What became of its work so far, in the order in which it was said. */
  marks: readonly JobMark[];
};

/** What comes of a crop in most seasons: bulbs whose tops go over, bulbs that stay green, leaves alone, or nothing. */
type CropEnd = 'bulbs' | 'unripe' | 'leaves' | 'lost';

export type Noted = { day: DayNumber; observation: Observation };

/** The dates of a crop that its jobs hang on; null where most seasons don't come so far. */
export type Course = Omit<JobGrounds, 'lift'> & {
  advice: LiftAdvice | null;
  start: DayNumber;
  /** Seed up, sets sprouted. */
  up: Spread<DayNumber> | null;
  /** It stands in its bed. */
  stands: Spread<DayNumber> | null;
  onset: Spread<DayNumber> | null;
  fall: Spread<DayNumber> | null;
  end: CropEnd;
  /** Last day of the longest season. */
  last: DayNumber;
  /** Day from which it has so many leaves in its bed. */
  leavesOn: (leaves: number) => DayNumber | null;
  /** Day it was lifted; null: it stands. */
  liftedOn: DayNumber | null;
  /** What was noted of it from its start to today, by day. */
  noted: readonly Noted[];
  /** The first day on which most of its tops were seen over. */
  topsSeen: { day: DayNumber; share: number } | null;
};

/** A course with the lifting settled: what comes after hangs on it. */
export type SettledCourse = Course & { lift: Due | null };

/** Tops over from which bulbs are lifted: 60–80 % is the best compromise (Wright et al. 2001). */
const liftFromShare = 0.6;
/** What was given to the ground before is of the crop too, days. */
const notedBefore = 21;

/** Most seasons. */
const mostly = 0.5;

const mostlyDays = <Days>({ share, days }: { share: number; days: Days | null }) =>
  share >= mostly ? days : null;

export function courseOf(grounds: JobGrounds): Course {
  const { site, plan, summary, observations, today, liftedOn } = grounds.crop;
  const { emergence, plantOut, onset, neckFall, outcome } = summary;
  const start = plan.startDay;
  const up = mostlyDays(emergence);
  const onsetDays = mostlyDays(onset);
  const fall = mostlyDays(neckFall);
  const noted = observations
    .map((observation) => ({ observation, day: parseDay(observation.date) ?? Number.NaN }))
    .filter(({ day }) => day >= start - notedBefore && day <= today)
    .sort((a, b) => a.day - b.day);
  const topsSeen = topsOver(noted);
  let leaves: DateSpread[] | null = null;
  const { lift: advice, ...others } = grounds;
  return {
    ...others,
    advice,
    start,
    up,
    stands: standsOf(grounds.crop, up, plantOut && mostlyDays(plantOut)),
    onset: onsetDays,
    fall,
    end: fall || topsSeen ? 'bulbs' : outcome === 'winter-killed' ? 'lost' : onsetDays ? 'unripe' : 'leaves',
    last: start + runnerOf(site, plan).crop.lastDay,
    leavesOn(count) {
      leaves ??= leafDates(site, plan);
      return mostlyDays(leaves[count])?.p50 ?? null;
    },
    liftedOn: liftedOn ?? saidLifted(grounds),
    noted,
    topsSeen,
  };
}

function standsOf(
  { plan }: TendedCrop,
  up: Spread<DayNumber> | null,
  plantOut: Spread<DayNumber> | null,
): Spread<DayNumber> | null {
  if (plan.start === 'raised-seedlings') return plantOut;
  if (plan.start === 'direct-seed') return up;
  return { p10: plan.startDay, p50: plan.startDay, p90: plan.startDay };
}

/** A grower may say that lifting is done without noting what was lifted. */
function saidLifted({ crop, marks }: JobGrounds): DayNumber | null {
  const last = marks.findLast(({ job }) => job === 'lift');
  const day = last?.state === 'done' ? parseDay(last.date) : null;
  return day !== null && day <= crop.today && day >= crop.plan.startDay ? day : null;
}

function topsOver(noted: readonly Noted[]): Course['topsSeen'] {
  for (const { day, observation } of noted) {
    const share = observation.topsOverShare ?? 0;
    if (share >= liftFromShare) return { day, share };
  }
  return null;
}
