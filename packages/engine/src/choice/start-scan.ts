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
import { total, worthParts } from './worth.ts';

/** Week starts of a year, counted from a first day. */
export const scanWeeks = 52;

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
  /** Best of the mean climate. */
  coarse: MeanTrial;
  /** The best start over the weather years, or a middling one of those as good as it. */
  best: () => SeasonSummary;
};

/** Looks over the starts of the year from `firstDay` on. The plan's own days don't count. */
export function scanStarts(site: Site, plan: Plan, firstDay: number): StartScan {
  const runner = runnerOf(site, { ...plan, startDay: firstDay, plantOutDay: null });
  const mean = Array.from({ length: scanWeeks }, (_, week) =>
    meanTrial(site, plan, runner, firstDay + 7 * week),
  );
  const coarse = mean.reduce((a, b) => (b.worth > a.worth ? b : a));
  return { coarse, best: () => refine(site, plan, runner, mean) };
}

function meanTrial(site: Site, plan: Plan, runner: Runner, startDay: number): MeanTrial {
  runner.moveTo(startDay, null);
  const outcome = runner.meanSeason();
  const { dryMatterShare } = runner.crop.type;
  const verdict = judge(outcome, dryMatterShare, referenceBulbG(site, plan));
  const days = outcome.reached === stage.fallen ? outcome.fellOn : null;
  const harvest = {
    goodShare: promise(verdict, outcome),
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

/** Weeks this near to a good one of the mean climate are tried over the weather years. */
const reachWeeks = 2;
/** Where the mean climate has no good week, this many of its best are tried. */
const fallbackWeeks = 4;

function refine(site: Site, plan: Plan, runner: Runner, mean: readonly MeanTrial[]): SeasonSummary {
  const harvest = harvester(site, runner, referenceBulbG(site, plan));
  const tried = new Map<number, number>();
  const worthAt = (week: number) => {
    let found = tried.get(week);
    if (found === undefined) {
      const { startDay } = mean[week];
      runner.moveTo(startDay, null);
      found = total(worthParts(site, { ...plan, startDay }, harvest(), null));
      tried.set(week, found);
    }
    return found;
  };
  let best = 0;
  let most = Number.NEGATIVE_INFINITY;
  const consider = (week: number) => {
    const found = worthAt(week);
    if (found > most) {
      most = found;
      best = week;
    }
  };
  for (const week of promising(mean)) consider(week);
  // on to the top of the hill
  for (let from = -1; from !== best; ) {
    from = best;
    consider((from + 1) % scanWeeks);
    consider((from + scanWeeks - 1) % scanWeeks);
  }
  const startDay = mean[middleAhead(bestStretch(best, scanWeeks, worthAt), scanWeeks)].startDay;
  runner.moveTo(startDay, null);
  return summarise(site, { ...plan, startDay, plantOutDay: null }, runner);
}

/** Weeks in or near a stretch that is good in the mean climate: every second, or fourth where that is half the year. */
function promising(mean: readonly MeanTrial[]): number[] {
  const isGood = (week: number) => mean[(week + scanWeeks) % scanWeeks].verdict === 'good';
  const near = mean
    .map((_, week) => week)
    .filter((week) => {
      for (let off = -reachWeeks; off <= reachWeeks; off++) if (isGood(week + off)) return true;
      return false;
    });
  const stride = near.length > scanWeeks / 2 ? 4 : 2;
  if (near.length > 0) return near.filter((_, at) => at % stride === 0);
  return mean
    .map(({ worth: value }, week) => ({ value, week }))
    .sort((a, b) => b.value - a.value)
    .slice(0, fallbackWeeks)
    .map(({ week }) => week);
}
