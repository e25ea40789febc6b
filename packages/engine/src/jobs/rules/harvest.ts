import { climateDayOf, type DayNumber } from '../../calendar/index.ts';
import {
  broughtIn,
  dryingOf,
  isStoreLook,
  longestUnripe,
  storeLooks,
  takenInAfter,
  usualLifted,
} from '../../keep/index.ts';
import { daysToTopsOver } from '../../plant/index.ts';
import type { Course, SettledCourse } from '../course.ts';
import { type Due, due } from '../due.ts';
import { greenLeaves } from './bed-work.ts';

/** Of the tops, over where lifting may begin and where it is best: 60–80 % is the best compromise (Wright et al. 2001). */
const liftShares = { from: 0.6, best: 0.8 } as const;
/** Rots were worst three weeks after half the tops were over (Wright et al. 2001). */
const liftWithin = 14;
/** Onions hardly grow any more below this, °C (memory). */
const restingBelowC = 5;
/** Leaves of four or more are pulled over so many days (University of Illinois Extension: 28–42 from sets). */
const pullDays = 42;

/** When bulbs come out of the ground, by the tops; without bulbs, when leaves are pulled. */
export function liftOf(course: Course): Due | null {
  const { crop, liftedOn, fall, topsSeen, onset, end, leavesOn } = course;
  if (liftedOn !== null)
    return due(
      { from: liftedOn, best: liftedOn, to: liftedOn },
      'lifted',
      { liftedDay: liftedOn },
      { isDone: true },
    );
  if (topsSeen) {
    const { day, share } = topsSeen;
    return due({ from: day, best: day, to: day + liftWithin }, 'tops-seen', {
      topsPlantShare: share,
      seenDay: day,
    });
  }
  if (fall) {
    const best = fall.p50 + daysToTopsOver(liftShares.best);
    const to = Math.max(fall.p90, fall.p50) + liftWithin;
    if (course.advice?.verdict === 'before-rain') {
      const from = Math.min(crop.today, best);
      const { topsOverShare, rainMm } = course.advice;
      return due({ from, best, to }, 'lift-before-rain', { topsPlantShare: topsOverShare, rainMm });
    }
    return due({ from: fall.p10 + daysToTopsOver(liftShares.from), best, to }, 'tops-over', {
      fallDay: fall.p50,
      share: crop.summary.neckFall.share,
    });
  }
  if (end === 'unripe' && onset) {
    const best = Math.max(
      onset.p50 + 1,
      Math.min(coldDay(course, onset.p50), onset.p50 + longestUnripe, course.last),
    );
    const from = Math.max(onset.p50 + 1, best - liftWithin);
    return due({ from, best, to: best + liftWithin }, 'lift-unripe', {
      onsetDay: onset.p50,
      restTempC: restingBelowC,
    });
  }
  const from = end === 'leaves' ? leavesOn(greenLeaves) : null;
  if (from === null) return null;
  return due({ from, best: from + pullDays / 2, to: from + pullDays }, 'pull-green', { leaves: greenLeaves });
}

/** The day after another from which onions rest for cold in the mean climate. */
function coldDay({ crop: { site } }: Course, after: DayNumber): DayNumber {
  const { tempMeanC } = site.mean('none');
  const at = climateDayOf(after);
  for (let days = 1; days < longestUnripe; days++)
    if (tempMeanC[at + days] < restingBelowC) return after + days;
  return after + longestUnripe;
}

/** A bed whose tops begin to fall is looked at twice a week: 10–20 % over tells ripeness (University of California, Davis). */
const lookBefore = 7;

export function checkTops({ fall, lift, liftedOn, topsSeen, onset }: SettledCourse): Due | null {
  if (!fall || !lift || liftedOn !== null || topsSeen) return null;
  const from = Math.max(onset?.p50 ?? fall.p10, fall.p10 - lookBefore);
  return due(
    { from, best: Math.max(from, fall.p10), to: Math.max(fall.p10, lift.to - liftWithin) },
    'check-tops',
    {
      fallDay: fall.p50,
    },
  );
}

/** Days from lifting until necks are tight, under a roof, in the weather of these weeks. */
function dryingAfter({ crop: { site, plan } }: SettledCourse, lift: Due): Drying {
  let days = dryings.get(lift);
  if (!days) {
    const { p10, p50, p90 } = dryingOf(site, plan, 'under-roof', lift.best);
    const within = (after: number | null) => Math.min(takenInAfter, after ?? takenInAfter);
    days = { from: within(p10), best: within(p50), to: within(p90) };
    dryings.set(lift, days);
  }
  return days;
}

type Drying = { from: number; best: number; to: number };
/** Four kinds of work hang on the drying of one lifting. */
const dryings = new WeakMap<Due, Drying>();

/** What follows lifting is for ripe bulbs; thick-necked ones are dried as well and eaten first. */
function ripe({ lift, end, liftedOn }: SettledCourse): Due | null {
  return end === 'bulbs' || (end === 'lost' && liftedOn !== null) ? lift : null;
}

export function dry(course: SettledCourse): Due | null {
  const lift = course.end === 'unripe' ? course.lift : ripe(course);
  if (!lift) return null;
  const drying = dryingAfter(course, lift);
  return due(
    { from: lift.from, best: lift.best + 1, to: lift.to + drying.to },
    lift.why.code === 'lift-unripe' ? 'dry-unripe' : 'dry',
    { liftDay: lift.best, fromDays: drying.from, toDays: drying.to },
  );
}

export function clean(course: SettledCourse): Due | null {
  const lift = ripe(course);
  if (!lift) return null;
  const drying = dryingAfter(course, lift);
  const days = { from: lift.from + drying.from, best: lift.best + drying.best, to: lift.to + drying.to };
  return due(days, 'clean', { liftDay: lift.best, days: drying.best });
}

/** Sound bulbs go to their store once they are clean, within a week. */
const storeWithin = 7;

export function store(course: SettledCourse): Due | null {
  const lift = ripe(course);
  if (!lift) return null;
  const drying = dryingAfter(course, lift);
  const days = {
    from: lift.from + drying.from,
    best: lift.best + drying.best + 1,
    to: lift.to + drying.to + storeWithin,
  };
  const isDone = course.noted.some(({ observation }) => isStoreLook(observation));
  return due(days, 'store', { liftDay: lift.best }, { isDone });
}

/** A look may come so much before or after its day (common practice, no source). */
const lookWithin = 7;

export function checkStore(course: SettledCourse): Due[] {
  const lift = ripe(course);
  if (!lift) return [];
  const { keepsMonths, store } = course.kept;
  const noted = course.noted.map(({ day, observation }) => ({ ...observation, day }));
  const { thickNeckShare } = broughtIn(noted, lift.best);
  const lot = { keepsMonths, ...usualLifted, ...(thickNeckShare !== null && { thickNeckShare }) };
  const looked = noted.filter(isStoreLook).map(({ day }) => day - lift.best);
  const { lasts, looks } = storeLooks(lot, store, climateDayOf(lift.best), looked);
  return looks.map(({ number, after, isDone }) => {
    const days = {
      from: lift.from + after - lookWithin,
      best: lift.best + after,
      to: lift.to + after + lookWithin,
    };
    return due(days, 'check-store', { lastsDay: lift.best + lasts }, { number, isDone });
  });
}
