import type { DayNumber } from '../calendar/index.ts';
import type { Verdict } from '../plant/index.ts';
import {
  judge,
  limits,
  type Outcome,
  type Plan,
  type Runner,
  referenceBulbG,
  runnerOf,
  type SeasonSummary,
  type Site,
  stage,
  startedOn,
  summarise,
} from '../season/index.ts';
import { bestStretch, middleOf } from './best-stretch.ts';
import { harvester } from './harvest.ts';
import { once } from './once.ts';
import { commonYearStart, weekStarts, weeksAhead } from './week-starts.ts';
import { hindranceOn } from './workable.ts';
import { total, worthParts } from './worth.ts';

/** One start in the mean climate: what is known before any weather year is tried. */
export type MeanTrial = {
  /** Its place among the weeks of the year, 0…51. */
  week: number;
  startDay: DayNumber;
  verdict: Verdict;
  bulbDryG: number;
  neckFallDay: DayNumber | null;
  /** About what it will turn out to be worth; see `worth`. */
  worth: number;
};

/** The starts of a year for one plan, each at the next day it comes round, tried as far as asked. */
export type StartScan = {
  plan: Plan;
  /** Moved about by whatever is tried. */
  runner: Runner;
  /** The week starts in the order of the year. */
  weeks: readonly DayNumber[];
  /** Every second of them, on its day of the year in which all are tried. */
  mean: readonly MeanTrial[];
  /** Whether a start of this kind is usual on a day; others are never advised. */
  isUsual: (startDay: DayNumber) => boolean;
  /** Best of the mean climate. */
  coarse: MeanTrial;
  /** What the best fortnight is worth over some of the weather years. */
  glance: () => number;
  /** The best start of the year over the weather years, or a middling one of those as good as it, whatever the day it is asked on. */
  best: () => BestStart;
};

/** `worth` is that of the year in which all are tried. */
export type BestStart = { summary: SeasonSummary; worth: number };

/** Looks over the starts that come from `today` on. The plan's own days don't count. */
export function scanStarts(
  site: Site,
  plan: Plan,
  today: DayNumber,
  isUsual: (startDay: DayNumber) => boolean = () => true,
): StartScan {
  const runner = runnerOf(site, startedOn(plan, today));
  const weeks = weeksAhead(today);
  const tried = site.isDated ? weeks : weeksAhead(commonYearStart);
  const mean = tried.flatMap((startDay, week) =>
    week % 2 === 0 && isUsual(startDay) ? [meanTrial(site, plan, runner, week, startDay)] : [],
  );
  const highest = mean.reduce((a, b) => (b.worth > a.worth ? b : a));
  const ahead = weeks[highest.week] - highest.startDay;
  const { startDay, neckFallDay } = highest;
  const coarse = {
    ...highest,
    startDay: startDay + ahead,
    neckFallDay: neckFallDay === null ? null : neckFallDay + ahead,
  };
  const glance = once(() => look(site, plan, runner, mean));
  return {
    plan,
    runner,
    weeks,
    mean,
    isUsual,
    coarse,
    glance: () => glance().worth,
    best: once(() => {
      const { week, worth } = refine(site, plan, runner, tried, isUsual, glance());
      const startDay = weeks[week];
      runner.moveTo(startDay, null);
      return { summary: summarise(site, startedOn(plan, startDay), runner), worth };
    }),
  };
}

function meanTrial(site: Site, plan: Plan, runner: Runner, week: number, startDay: DayNumber): MeanTrial {
  runner.moveTo(startDay, null);
  const outcome = runner.meanSeason();
  const { dryMatterShare } = runner.crop.type;
  const verdict = judge(outcome, plan, dryMatterShare, referenceBulbG(site, plan));
  const days = outcome.reached === stage.fallen ? outcome.fellOn : null;
  const harvest = {
    goodShare: promise(verdict, outcome),
    smallShare: 0,
    boltedShare: outcome.boltedShare,
    dryG: outcome.bulbDryG,
    days,
  };
  return {
    week,
    startDay,
    verdict,
    bulbDryG: outcome.bulbDryG,
    neckFallDay: days === null ? null : startDay + days,
    worth: total(worthParts(site, { ...plan, startDay }, harvest, null)),
  };
}

/** How near a mean season comes to good: orders the weeks that fall short, and decides nothing else. */
function promise(verdict: Verdict, outcome: Outcome): number {
  switch (verdict) {
    case 'good':
      return 1;
    case 'small':
      return 0.5;
    case 'bolts':
      return (0.4 * limits.bolted) / outcome.boltedShare;
    case 'winter-killed':
      return (0.4 * outcome.aliveShare) / limits.killed;
    case 'not-ripe':
      return 0.2;
    case 'no-bulb':
      return 0;
  }
}

/** Where the mean climate has no good fortnight, this many of its best are tried. */
const fallbacks = 4;
/** Fortnights are put in order on this share of the weather years, and on at least so many; all dates meet the same. */
const firstLook = { share: 1 / 3, years: 8 } as const;

/** A first look: what the best fortnight seems to be worth, and the weeks from which the best start is looked for. */
type Glance = { worth: number; hills: readonly number[]; isHopeless: boolean };

/** A second hill is climbed too that seems this little lower than the first, in good seasons of one: few years were seen. */
const nearlyAsHigh = 0.1;
/** Weeks between hills. */
const hillsApart = 8;

function look(site: Site, plan: Plan, runner: Runner, mean: readonly MeanTrial[]): Glance {
  const years = Math.min(site.years, Math.max(firstLook.years, Math.ceil(site.years * firstLook.share)));
  const harvest = harvester(site, plan, runner, referenceBulbG(site, plan));
  let isHopeless = true;
  const seen = promising(site, plan, mean).map(({ week, startDay }) => {
    runner.moveTo(startDay, null);
    const came = harvest(years);
    if (came.goodShare > 0) isHopeless = false;
    return { week, worth: total(worthParts(site, { ...plan, startDay }, came, null)) };
  });
  const highest = (weeks: typeof seen) => weeks.reduce((a, b) => (b.worth > a.worth ? b : a));
  const top = highest(seen);
  const others = seen.filter(
    ({ week, worth }) => worth >= top.worth - nearlyAsHigh && isApart(week, top.week),
  );
  const hills = others.length > 0 ? [top.week, highest(others).week] : [top.week];
  return { worth: top.worth, hills, isHopeless };
}

function isApart(week: number, other: number): boolean {
  const apart = Math.abs(week - other);
  return Math.min(apart, weekStarts.length - apart) >= hillsApart;
}

/** The week of the best start, or a middling one of those as good as it. */
function refine(
  site: Site,
  plan: Plan,
  runner: Runner,
  weeks: readonly DayNumber[],
  isUsual: (startDay: DayNumber) => boolean,
  { hills, isHopeless }: Glance,
): { week: number; worth: number } {
  const harvest = harvester(site, plan, runner, referenceBulbG(site, plan));
  const worthAt = kept((week) => {
    const startDay = weeks[week];
    if (!isUsual(startDay)) return Number.NEGATIVE_INFINITY;
    runner.moveTo(startDay, null);
    return total(worthParts(site, { ...plan, startDay }, harvest(), null));
  });
  const count = weeks.length;
  // where not one season is good no week is better than another
  if (isHopeless) return { week: hills[0], worth: worthAt(hills[0]) };
  // up to the top, over a week alone that falls short
  const climbed = hills.map((foot) => {
    let top = foot;
    for (let from = -1; from !== top; ) {
      from = top;
      const next = [1, -1, 2, -2].map((step) => (from + step + count) % count);
      top = next.reduce((a, b) => (worthAt(b) > worthAt(a) ? b : a), from);
    }
    return top;
  });
  const best = climbed.reduce((a, b) => (worthAt(b) > worthAt(a) ? b : a));
  const week = middleOf(bestStretch(best, count, worthAt), count);
  return { week, worth: worthAt(week) };
}

/** The same, worked out once for each week. */
function kept(worthOf: (week: number) => number): (week: number) => number {
  const known = new Map<number, number>();
  return (week) => {
    const found = known.get(week) ?? worthOf(week);
    known.set(week, found);
    return found;
  };
}

/** Fortnights that are good in the mean climate or next to such; every second of them where that is half the year. */
function promising(site: Site, { start }: Plan, mean: readonly MeanTrial[]): readonly MeanTrial[] {
  const near = mean.filter(
    ({ startDay }, at) => isNearGood(mean, at) && hindranceOn(site, start, startDay) === null,
  );
  const stride = near.length > mean.length / 2 ? 2 : 1;
  if (near.length > 0) return near.filter((_, at) => at % stride === 0);
  return mean.toSorted((a, b) => b.worth - a.worth).slice(0, fallbacks);
}

/** Whether a fortnight, or one beside it, is good in the mean climate. */
export function isNearGood(mean: readonly MeanTrial[], at: number): boolean {
  const { length } = mean;
  return [at - 1, at, at + 1].some((near) => mean[(near + length) % length].verdict === 'good');
}
