import type { DayNumber } from '../calendar/index.ts';
import {
  fullSizeDryG,
  judge,
  type Plan,
  planDefaults,
  type Runner,
  referenceBulbG,
  runnerOf,
  type Site,
  startedOn,
} from '../season/index.ts';
import type { GrowingOptions } from './growing-options.ts';
import { countIn, emptyTally, type Harvest, harvestOfTally, type Tally, tallyColumns } from './harvest.ts';
import type { Way } from './ways.ts';
import { hindranceOn } from './workable.ts';
import { reapInto, total, type WorthParts, worthParts } from './worth.ts';

/** One start of the year in a race, tried over as many weather years as it has seemed to deserve. */
export type Entrant = {
  week: number;
  kind: EntrantKind;
  plan: Plan;
  isHindered: boolean;
  tally: Tally;
  /** Over the seasons so far, as is their sum. */
  parts: WorthParts;
  worth: number;
  /** The most that it can be worth, or about the most once some seasons were tried. */
  hope: number;
};

/** What the starts of one type share. */
type EntrantKind = {
  runner: Runner;
  referenceDryG: number;
  /** Whether some day of the year is long enough for some draw. */
  canBulb: boolean;
};

const everyFortnight = 2;

const bestHarvest: Harvest = { goodShare: 1, smallShare: 0, boltedShare: 0, dryG: fullSizeDryG, days: 0 };
const noBulb: Harvest = { goodShare: 0, smallShare: 0, boltedShare: 0, dryG: 0, days: null };

/** Every second of the weeks, with what a packet of the onion usually holds then. */
export function entrantsOf(
  site: Site,
  ways: readonly Way[],
  weeks: readonly DayNumber[],
  options: GrowingOptions,
): Entrant[] {
  const kinds = ways.map(({ isUsual, ...onion }) => {
    const plan = startedOn({ ...planDefaults, ...options, ...onion }, weeks[0]);
    const runner = runnerOf(site, plan);
    const canBulb = canMakeBulbs(site, plan, runner);
    return { plan, isUsual, kind: { runner, referenceDryG: referenceBulbG(site, plan), canBulb } };
  });
  const room = tallyColumns * site.years;
  const columns = new Float64Array(room * Math.ceil(weeks.length / everyFortnight));
  return weeks.flatMap((startDay, week) => {
    const use = week % everyFortnight === 0 && kinds.find(({ isUsual }) => isUsual(startDay));
    if (!use) return [];
    const plan = startedOn(use.plan, startDay);
    const parts = worthParts(site, plan, use.kind.canBulb ? bestHarvest : noBulb, null);
    // tops that go over on the day of the start would dry in its weather, and they never do
    if (use.kind.canBulb) parts.drying = 0;
    return {
      week,
      kind: use.kind,
      plan,
      isHindered: hindranceOn(site, plan.start, startDay) !== null,
      tally: emptyTally(site.years, columns, (room * week) / everyFortnight),
      parts,
      worth: Number.NEGATIVE_INFINITY,
      hope: total(parts),
    };
  });
}

/** Tries a start over the first `years` seasons of an order; those it has met are not met again. */
export function tryOver(site: Site, entrant: Entrant, order: readonly number[], years: number): void {
  const { tally, plan, kind, parts } = entrant;
  const { runner, referenceDryG } = kind;
  if (tally.seasons >= years) return;
  runner.moveTo(plan.startDay, null);
  for (let at = tally.seasons; at < years; at++) {
    const outcome = runner.quickSeason(order[at]);
    countIn(tally, outcome, judge(outcome, plan, runner.crop.type.dryMatterShare, referenceDryG));
  }
  reapInto(parts, site, plan, harvestOfTally(tally));
  entrant.worth = total(parts);
}

function canMakeBulbs(site: Site, plan: Plan, { crop, table }: Runner): boolean {
  const lampH = plan.start === 'raised-seedlings' ? (plan.lampHours ?? 0) : 0;
  const longestH = table.photoperiodH.reduce((a, b) => Math.max(a, b), lampH);
  const soonest = site
    .draws()
    .reduce((least, { criticalShiftH }) => Math.min(least, criticalShiftH), Infinity);
  return longestH > crop.type.criticalPhotoperiodH + crop.shadePenaltyH + soonest;
}
