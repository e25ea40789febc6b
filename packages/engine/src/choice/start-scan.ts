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
  summarise,
} from '../season/index.ts';
import { bestStretch, middleAhead } from './best-stretch.ts';
import { harvester } from './harvest.ts';
import { isEvenWeek, weekStartsFrom } from './week-starts.ts';
import { hindranceOn } from './workable.ts';
import { total, worthParts } from './worth.ts';

/** One start in the mean climate: what is known before any weather year is tried. */
export type MeanTrial = {
  startDay: number;
  verdict: Verdict;
  bulbDryG: number;
  neckFallDay: number | null;
  /** About what it will turn out to be worth; see `worth`. */
  worth: number;
};

/** The year ahead for one plan, tried as far as asked. */
export type StartScan = {
  plan: Plan;
  /** Moved about by whatever is tried. */
  runner: Runner;
  /** The year's week starts from the first day on. */
  weeks: readonly number[];
  /** Every second of them. */
  mean: readonly MeanTrial[];
  /** Whether a start of this kind is usual on a day; others are never advised. */
  isUsual: (startDay: number) => boolean;
  /** Best of the mean climate. */
  coarse: MeanTrial;
  /** What the best fortnight is worth over some of the weather years. */
  glance: () => number;
  /** The best start over the weather years, or a middling one of those as good as it. */
  best: () => SeasonSummary;
};

/** Looks over the starts of the year from `firstDay` on. The plan's own days don't count. */
export function scanStarts(
  site: Site,
  plan: Plan,
  firstDay: number,
  isUsual: (startDay: number) => boolean = () => true,
): StartScan {
  const runner = runnerOf(site, { ...plan, startDay: firstDay, plantOutDay: null });
  const weeks = weekStartsFrom(firstDay);
  const mean = weeks
    .filter(isEvenWeek)
    .filter(isUsual)
    .map((startDay) => meanTrial(site, plan, runner, startDay));
  const coarse = mean.reduce((a, b) => (b.worth > a.worth ? b : a));
  let seen: Glance | null = null;
  const glance = () => {
    seen ??= look(site, plan, runner, mean);
    return seen;
  };
  return {
    plan,
    runner,
    weeks,
    mean,
    isUsual,
    coarse,
    glance: () => glance().worth,
    best: () => refine(site, plan, runner, weeks, isUsual, glance()),
  };
}

function meanTrial(site: Site, plan: Plan, runner: Runner, startDay: number): MeanTrial {
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

/** The best start at a first look. */
type Glance = { startDay: number; worth: number; isHopeless: boolean };

function look(site: Site, plan: Plan, runner: Runner, mean: readonly MeanTrial[]): Glance {
  const years = Math.min(site.years, Math.max(firstLook.years, Math.ceil(site.years * firstLook.share)));
  const harvest = harvester(site, plan, runner, referenceBulbG(site, plan));
  const seen: Glance = { startDay: mean[0].startDay, worth: Number.NEGATIVE_INFINITY, isHopeless: true };
  let most = Number.NEGATIVE_INFINITY;
  for (const { startDay } of promising(site, plan, mean)) {
    runner.moveTo(startDay, null);
    const came = harvest(years);
    if (came.goodShare > 0) seen.isHopeless = false;
    const worth = total(worthParts(site, { ...plan, startDay }, came, null));
    seen.worth = Math.max(seen.worth, worth);
    const soon = worth - waitCost(startDay - mean[0].startDay);
    if (soon > most) {
      most = soon;
      seen.startDay = startDay;
    }
  }
  return seen;
}

/**
 * A crop next year is worth this much less than one now, in good seasons of one (our choice): it settles when to start,
 * never what is grown.
 */
const waitYear = 0.05;

function waitCost(days: number): number {
  return (waitYear * days) / 365;
}

function refine(
  site: Site,
  plan: Plan,
  runner: Runner,
  weeks: readonly number[],
  isUsual: (startDay: number) => boolean,
  { startDay: glanced, isHopeless }: Glance,
): SeasonSummary {
  const harvest = harvester(site, plan, runner, referenceBulbG(site, plan));
  const worthAt = kept((week) => {
    const startDay = weeks[week];
    if (!isUsual(startDay)) return Number.NEGATIVE_INFINITY;
    runner.moveTo(startDay, null);
    return total(worthParts(site, { ...plan, startDay }, harvest(), null));
  });
  const count = weeks.length;
  let best = weeks.indexOf(glanced);
  // where not one season is good no week is better than another
  if (!isHopeless) {
    // on to the top of the hill, but not back into what has gone by
    for (let from = -1; from !== best; ) {
      from = best;
      const next = [from + 1, from - 1].filter((week) => week >= 0 && week < count);
      best = next.reduce((a, b) => (worthAt(b) > worthAt(a) ? b : a), from);
    }
    best = middleAhead(bestStretch(best, count, worthAt), count);
  }
  const startDay = weeks[best];
  runner.moveTo(startDay, null);
  return summarise(site, { ...plan, startDay, plantOutDay: null }, runner);
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
