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
  const mean = Array.from({ length: scanWeeks / 2 }, (_, fortnight) =>
    meanTrial(site, plan, runner, firstDay + 14 * fortnight),
  );
  const coarse = mean.reduce((a, b) => (b.worth > a.worth ? b : a));
  return { coarse, best: () => refine(site, plan, runner, firstDay, mean) };
}

function meanTrial(site: Site, plan: Plan, runner: Runner, startDay: number): MeanTrial {
  runner.moveTo(startDay, null);
  const outcome = runner.meanSeason();
  const { dryMatterShare } = runner.crop.type;
  const verdict = judge(outcome, dryMatterShare, referenceBulbG(site, plan));
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

function refine(
  site: Site,
  plan: Plan,
  runner: Runner,
  firstDay: number,
  mean: readonly MeanTrial[],
): SeasonSummary {
  const harvest = harvester(site, runner, referenceBulbG(site, plan));
  const tried = new Map<number, number>();
  let isHopeless = true;
  const worthAt = (week: number) => {
    let found = tried.get(week);
    if (found === undefined) {
      const startDay = firstDay + 7 * week;
      runner.moveTo(startDay, null);
      const came = harvest();
      if (came.goodShare > 0) isHopeless = false;
      found = total(worthParts(site, { ...plan, startDay }, came, null));
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
  for (const fortnight of promising(mean)) consider(2 * fortnight);
  // where not one season is good no week is better than another
  if (!isHopeless) {
    // on to the top of the hill
    for (let from = -1; from !== best; ) {
      from = best;
      consider((from + 1) % scanWeeks);
      consider((from + scanWeeks - 1) % scanWeeks);
    }
    best = middleAhead(bestStretch(best, scanWeeks, worthAt), scanWeeks);
  }
  const startDay = firstDay + 7 * best;
  runner.moveTo(startDay, null);
  return summarise(site, { ...plan, startDay, plantOutDay: null }, runner);
}

/** Fortnights that are good in the mean climate or next to such; every second of them where that is half the year. */
function promising(mean: readonly MeanTrial[]): number[] {
  const fortnights = mean.length;
  const isGood = (at: number) => mean[(at + fortnights) % fortnights].verdict === 'good';
  const all = mean.map((_, at) => at);
  const near = all.filter((at) => isGood(at - 1) || isGood(at) || isGood(at + 1));
  const stride = near.length > fortnights / 2 ? 2 : 1;
  if (near.length > 0) return near.filter((_, at) => at % stride === 0);
  return all.sort((a, b) => mean[b].worth - mean[a].worth).slice(0, fallbacks);
}
