import { plantValuesOf, type Verdict } from '../plant/index.ts';
import {
  judge,
  type Outcome,
  type Plan,
  type Runner,
  type SeasonSummary,
  type Site,
  stage,
} from '../season/index.ts';

/** What came of a plan: of many seasons or of one. */
export type Harvest = {
  goodShare: number;
  /** Share of seasons whose bulbs are sound but small. */
  smallShare: number;
  boltedShare: number;
  /** Dry matter of the bulb, g. */
  dryG: number;
  /** Days from the start to neck fall; null where none comes. */
  days: number | null;
};

export function harvestOf(site: Site, { plan, ...s }: SeasonSummary): Harvest {
  return {
    goodShare: s.seasonShares.good,
    smallShare: s.seasonShares.small,
    boltedShare: s.boltedPlantsShare?.p50 ?? 0,
    dryG: (s.bulbMassG?.p50 ?? 0) * plantValuesOf(site.values, plan).dryMatterShare,
    days: s.neckFall.days && s.neckFall.days.p50 - plan.startDay,
  };
}

/** Seasons of one plan counted one by one, in any order. */
export type Tally = {
  seasons: number;
  good: number;
  small: number;
  /** Seasons in which plants came up, bulbs formed, tops went over. */
  up: number;
  bulbs: number;
  over: number;
  /** What those came to, each in order of size, from these places on: shares bolted, g of dry matter, days to neck fall. */
  columns: Float64Array;
  boltedAt: number;
  dryGAt: number;
  fellOnAt: number;
};

/** Numbers that a tally keeps for each season. */
export const tallyColumns = 3;

/** @param most seasons that there is room for @param columns shared by tallies, this one's from place `at` on */
export function emptyTally(most: number, columns = new Float64Array(tallyColumns * most), at = 0): Tally {
  return {
    seasons: 0,
    good: 0,
    small: 0,
    up: 0,
    bulbs: 0,
    over: 0,
    columns,
    boltedAt: at,
    dryGAt: at + most,
    fellOnAt: at + 2 * most,
  };
}

export function countIn(tally: Tally, outcome: Outcome, verdict: Verdict): void {
  const { columns } = tally;
  tally.seasons++;
  if (verdict === 'good') tally.good++;
  else if (verdict === 'small') tally.small++;
  if (outcome.reached >= stage.emerged) insert(columns, tally.boltedAt, tally.up++, outcome.boltedShare);
  if (outcome.reached >= stage.onset) insert(columns, tally.dryGAt, tally.bulbs++, outcome.bulbDryG);
  if (outcome.reached === stage.fallen) insert(columns, tally.fellOnAt, tally.over++, outcome.fellOn);
}

/** What at least one counted season comes to. */
export function harvestOfTally(tally: Tally): Harvest {
  const { seasons, columns, up, bulbs, over } = tally;
  return {
    goodShare: tally.good / seasons,
    smallShare: tally.small / seasons,
    boltedShare: up > 0 ? median(columns, tally.boltedAt, up) : 0,
    dryG: bulbs > 0 ? median(columns, tally.dryGAt, bulbs) : 0,
    days: over > 0 ? Math.round(median(columns, tally.fellOnAt, over)) : null,
  };
}

/** Puts a value into a stretch that is in order of size. */
function insert(columns: Float64Array, from: number, count: number, value: number): void {
  let at = from + count;
  for (; at > from && columns[at - 1] > value; at--) columns[at] = columns[at - 1];
  columns[at] = value;
}

/** As `quantileSorted` has it. */
function median(columns: Float64Array, from: number, count: number): number {
  const middle = (count - 1) / 2;
  const below = columns[from + Math.floor(middle)];
  return below + (columns[from + Math.ceil(middle)] - below) * (middle % 1);
}

/**
 * The same from a runner that stands at its start day, without the rest of a summary, over the first `years` weather
 * years, by default all.
 */
export function harvester(
  site: Site,
  plan: Plan,
  runner: Runner,
  referenceDryG: number,
): (years?: number) => Harvest {
  const { dryMatterShare } = runner.crop.type;
  const tally = emptyTally(site.years);
  return (years = site.years) => {
    Object.assign(tally, { seasons: 0, good: 0, small: 0, up: 0, bulbs: 0, over: 0 });
    for (let year = 0; year < years; year++) {
      const outcome = runner.quickSeason(year);
      countIn(tally, outcome, judge(outcome, plan, dryMatterShare, referenceDryG));
    }
    return harvestOfTally(tally);
  };
}
