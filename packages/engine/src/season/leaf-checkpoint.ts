import type { DayNumber } from '../calendar/index.ts';
import { quantileSorted } from '../math/index.ts';
import { bulbDiameterMm, type Verdict } from '../plant/index.ts';
import { judge } from './judge.ts';
import type { Plan } from './plan.ts';
import { referenceBulbG } from './reference-bulb.ts';
import { runnerOf } from './run.ts';
import { longestSeason } from './season-end.ts';
import type { Site } from './site.ts';
import type { SeasonSummary, Spread } from './summary.ts';
import { dayTrace } from './trace.ts';

/** A day on which a grower can tell by counting leaves how a crop stands. */
export type LeafCheckpoint = {
  day: DayNumber;
  /** Green leaves standing on a plant then. */
  leavesGreen: Spread;
  /** Null where the years don't show that fewer leaves end in smaller bulbs. */
  parting: LeafParting | null;
};

/** With so many whole leaves or fewer most years end in small bulbs, with more in good ones. */
export type LeafParting = { smallUpTo: number; goodMm: number; smallMm: number };

/** A season as told by its leaves. */
export type LeafCount = { leavesGreen: number; bulbMm: number; verdict: Verdict };

/** Days before bulbs start: time enough to water, feed and weed, and leaves enough to be counted. */
const aheadDays = 21;
/** Days that a crop has stood: before, every plant has the leaves it came with. */
const leastStandingDays = 14;
/** Most years: a share below this is none to go by. */
const mostYears = 2 / 3;
/** Fewer years on either side are chance. */
const leastSideYears = 5;
/** Less between the bulbs of few leaves and of many is not worth counting for, mm (common practice, no source). */
const leastGainMm = 5;

/**
 * Leaves to be seen about three weeks before bulbs start, over the weather years, and whether they part good years from
 * small ones; null where bulbs start in fewer than half of the years or too soon after the plants stand.
 */
export function leafCheckpoint(
  site: Site,
  { plan, emergence, plantOut, onset }: SeasonSummary,
): LeafCheckpoint | null {
  if (onset.days === null || onset.share < 0.5) return null;
  const day = onset.days.p50 - aheadDays;
  const stands = (plantOut ?? emergence).days?.p50 ?? plan.startDay;
  if (day < stands + leastStandingDays) return null;
  const counts = leafCounts(site, plan, day);
  if (counts.length < site.years / 2) return null;
  const sorted = Float64Array.from(counts, ({ leavesGreen }) => leavesGreen).sort();
  const at = (share: number) => quantileSorted(sorted, share);
  return { day, leavesGreen: { p10: at(0.1), p50: at(0.5), p90: at(0.9) }, parting: partLeaves(counts) };
}

/** The seasons in which a plant stands on that day. */
function leafCounts(site: Site, plan: Plan, day: DayNumber): LeafCount[] {
  const at = day - plan.startDay;
  const runner = runnerOf(site, plan);
  const reference = referenceBulbG(site, plan);
  const { dryMatterShare } = runner.crop.type;
  const trace = dayTrace(longestSeason + 1);
  const counts: LeafCount[] = [];
  for (let year = 0; year < site.years; year++) {
    trace.length = 0;
    const outcome = runner.season(year, trace);
    if (at < outcome.plantedOn || at >= trace.length) continue;
    counts.push({
      leavesGreen: trace.leavesGreen[at],
      bulbMm: bulbDiameterMm(outcome.bulbDryG / dryMatterShare),
      verdict: judge(outcome, plan, dryMatterShare, reference),
    });
  }
  return counts;
}

/** The whole number of leaves that parts small years from good ones best; other ends say nothing of size. */
export function partLeaves(counts: readonly LeafCount[]): LeafParting | null {
  const told = counts
    .filter(({ verdict }) => verdict === 'good' || verdict === 'small')
    .map(({ leavesGreen, ...season }) => ({ ...season, leaves: Math.round(leavesGreen) }));
  let best: (LeafParting & { right: number }) | null = null;
  for (const smallUpTo of new Set(told.map(({ leaves }) => leaves))) {
    const few = told.filter(({ leaves }) => leaves <= smallUpTo);
    const many = told.filter(({ leaves }) => leaves > smallUpTo);
    const small = few.filter(({ verdict }) => verdict === 'small').length;
    const good = many.filter(({ verdict }) => verdict === 'good').length;
    const isClear = small >= mostYears * few.length && good >= mostYears * many.length;
    if (!isClear || Math.min(few.length, many.length) < leastSideYears) continue;
    if (best === null || small + good > best.right)
      best = { smallUpTo, goodMm: middleMm(many), smallMm: middleMm(few), right: small + good };
  }
  if (best === null || best.goodMm - best.smallMm < leastGainMm) return null;
  const { smallUpTo, goodMm, smallMm } = best;
  return { smallUpTo, goodMm, smallMm };
}

function middleMm(seasons: readonly { bulbMm: number }[]): number {
  return quantileSorted(Float64Array.from(seasons, ({ bulbMm }) => bulbMm).sort(), 0.5);
}
