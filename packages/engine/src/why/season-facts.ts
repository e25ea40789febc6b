import { climateDayOf, climateYearDays, type DayNumber } from '../calendar/index.ts';
import { keepingCurve, keptDays, ratesOf, type StoreClimate, storeDrawsOf } from '../keep/index.ts';
import { clamp, mean } from '../math/index.ts';
import { boltedShare, bulbDiameterMm, type TypeValues } from '../plant/index.ts';
import {
  fullSizeDryG,
  judge,
  limits,
  type Outcome,
  outcomeOf,
  type Plan,
  percentiles,
  plantOutDayOf,
  referenceBulbG,
  runnerOf,
  type SeasonShares,
  type Site,
  smallBulbG,
  stage,
  startedOn,
} from '../season/index.ts';
import type { GrownSo } from './what-if.ts';

/** What one season came to, as far as a grower can see it. Shares 0…1. */
export type SeasonFacts = {
  /** How much this season counts; all of a crop sum to 1. */
  weight: number;
  emergedShare: number;
  killedShare: number;
  liftedShare: number;
  boltedShare: number;
  /** The same of a kind that flowers easily: kinds of a type differ, and no packet tells. */
  boltedIfProne: number;
  hasBulb: boolean;
  isRipe: boolean;
  bulbMm: number;
  /** Dry matter of the bulb, and of one that is small for the room it had, g. 0 without a bulb. */
  bulbDryG: number;
  smallDryG: number;
  /** Dry matter that the crop might have had in the same season, started at its best: neighbours have it, g. 0: not known. */
  hopedDryG: number;
  leavesAtOnset: number;
  /** Days short of water in a bed that is not watered. */
  thirstyDays: number;
  /** In store on the day asked about; null where no store is in question. */
  stored: { sprouted: number; rotten: number; frozen: number; sound: number; thickNecks: number } | null;
};

/** What a store is asked about: its air, how long the kind keeps, months, and the day on which bulbs were seen. */
export type StoreAsked = {
  air: StoreClimate;
  keepsMonths: readonly [number, number];
  noticed: DayNumber | null;
  /** Share of the bulbs with thick necks, at least and at most, whatever the season, 0…1. */
  thickNecks: readonly [least: number, most: number];
};

/** A season as it may have been: a plan in a place, with a store where one is in question. */
export type Trial = { site: Site; plan: Plan; store: StoreAsked | null };

/** All seasons of a trial, and what they come to. */
export type Tried = { trial: Trial; facts: readonly SeasonFacts[]; grown: GrownSo };

/** Days remembered are off by so much, and how often (memory). */
const aboutOffsets = [
  { days: -10, weight: 0.25 },
  { days: 0, weight: 0.5 },
  { days: 10, weight: 0.25 },
] as const;
const exactly = [{ days: 0, weight: 1 }] as const;

/** Where nobody says when a store was looked at (memory: from autumn to midwinter), days. */
const usualStored = 120;
/** Thick necks among bulbs whose tops fell, and among those whose tops stood (memory, adjustable). */
const thickNecks = { ripe: 0.04, unripe: 0.6 } as const;
/** Bruised in ordinary hands (memory, adjustable). */
const bruisedShare = 0.05;

/** Runs a trial through the seasons of its site. */
export function tryTrial(trial: Trial, isAbout: boolean): Tried {
  const { site, plan } = trial;
  const offsets = isAbout ? aboutOffsets : exactly;
  const runner = runnerOf(site, plan);
  const { type } = runner.crop;
  const { dryMatterShare } = type;
  const reference = referenceBulbG(site, plan);
  const smallDryG = Math.max(
    smallBulbG(plan.type, plan.densityPerM2) * dryMatterShare,
    limits.smallShare * Math.min(reference, fullSizeDryG),
  );
  const plantOut = plantOutDayOf(plan);
  const draws = trial.store && storeDrawsOf(site.years, site.seed);
  const facts: SeasonFacts[] = [];
  const shares: SeasonShares = {
    'winter-killed': 0,
    bolts: 0,
    'no-bulb': 0,
    'not-ripe': 0,
    small: 0,
    good: 0,
  };
  const onset: number[] = [];
  const fell: number[] = [];
  for (const { days, weight } of offsets) {
    runner.moveTo(plan.startDay + days, plantOut === null ? null : plantOut + days);
    for (let season = 0; season < site.years; season++) {
      const outcome = runner.season(season);
      const share = weight / site.years;
      shares[judge(outcome, plan, dryMatterShare, reference)] += share;
      if (outcome.reached >= stage.onset) onset.push(plan.startDay + days + outcome.onsetOn);
      if (outcome.reached >= stage.fallen) fell.push(plan.startDay + days + outcome.fellOn);
      const seen = factsOf(outcome, plan, type, smallDryG, share);
      if (trial.store && draws && outcome.reached >= stage.onset) {
        const lifted = plan.startDay + days + (seen.isRipe ? outcome.fellOn : outcome.onsetOn + unripeDays);
        seen.stored = storedFacts(trial.store, seen, lifted, draws[season]);
      }
      facts.push(seen);
    }
  }
  return { trial, facts, grown: grownSo(plan, shares, facts, onset, fell) };
}

/** Cold that turns half of a kind that flowers easily, against its type's (memory; in Oregon some kinds flowered three times as often as others). */
const proneFactor = 0.6;

/** Bulbs whose tops never fall are taken up about so long after they began (memory). */
const unripeDays = 70;

function factsOf(
  outcome: Outcome,
  plan: Plan,
  type: TypeValues,
  smallDryG: number,
  weight: number,
): SeasonFacts {
  const hasBulb = outcome.reached >= stage.onset;
  return {
    weight,
    emergedShare: outcome.reached >= stage.emerged ? outcome.emergedShare : 0,
    killedShare: 1 - outcome.aliveShare,
    liftedShare: outcome.liftedShare,
    boltedShare: outcome.boltedShare,
    boltedIfProne: boltedShare(outcome.coldDays, proneFactor * type.vernalHalfD, type.vernalSpreadD),
    hasBulb,
    isRipe: outcome.reached >= stage.fallen && !outcome.reverted,
    bulbMm: hasBulb ? bulbDiameterMm(outcome.bulbDryG / type.dryMatterShare) : 0,
    bulbDryG: hasBulb ? outcome.bulbDryG : 0,
    smallDryG,
    hopedDryG: 0,
    leavesAtOnset: outcome.leavesMade,
    thirstyDays: plan.water === 'rain' ? outcome.thirstyDays : 0,
    stored: null,
  };
}

function storedFacts(
  store: StoreAsked,
  { isRipe, boltedShare: bolted }: SeasonFacts,
  lifted: DayNumber,
  draw: Parameters<typeof keepingCurve>[3],
): NonNullable<SeasonFacts['stored']> {
  const own = (isRipe ? thickNecks.ripe : thickNecks.unripe) + 0.5 * bolted;
  const thickNeckShare = clamp(own, ...store.thickNecks);
  const lot = { keepsMonths: store.keepsMonths, thickNeckShare, bruisedShare };
  const liftedOn = climateDayOf(lifted);
  const curve = keepingCurve(lot, store.air, liftedOn, draw);
  const at = clamp(store.noticed === null ? usualStored : store.noticed - lifted, 1, keptDays - 1);
  const { frost } = ratesOf(store.air);
  let unfrozen = 1;
  for (let day = 0; day < at; day++) unfrozen *= 1 - frost[(liftedOn + day) % climateYearDays];
  const frozen = Math.min(1 - unfrozen, curve.rotten[at]);
  return {
    sprouted: curve.sprouted[at],
    rotten: curve.rotten[at] - frozen,
    frozen,
    sound: curve.sound[at],
    thickNecks: thickNeckShare,
  };
}

function grownSo(
  plan: Plan,
  shares: SeasonShares,
  facts: readonly SeasonFacts[],
  onset: number[],
  fell: number[],
): GrownSo {
  const bulbs = facts.filter(({ hasBulb }) => hasBulb);
  const stored = facts.flatMap((of) => (of.stored ? [of.stored] : []));
  const middle = (days: number[]) =>
    days.length * 2 < facts.length ? null : Math.round(percentiles(days).p50);
  return {
    plan: startedOn(plan, plan.startDay, plantOutDayOf(plan)),
    outcome: outcomeOf(shares).outcome,
    goodShare: shares.good,
    bulbDiameterMm: bulbs.length === 0 ? null : percentiles(bulbs.map(({ bulbMm }) => bulbMm)),
    leavesAtOnset:
      bulbs.length === 0 ? null : percentiles(bulbs.map(({ leavesAtOnset }) => leavesAtOnset)).p50,
    boltedShare: percentiles(facts.map((of) => of.boltedShare)).p50,
    onset: middle(onset),
    neckFall: middle(fell),
    soundShare: stored.length === 0 ? null : mean(stored.map(({ sound }) => sound)),
  };
}
