import type { DayNumber } from '../calendar/index.ts';
import type { Kind } from '../choice/index.ts';
import type { Like } from '../garden/index.ts';
import type { DateSpread, Plan, SeasonSummary, Spread } from '../season/index.ts';
import type { Household } from './household.ts';

/**
 * Onions that cannot be told apart by how they are started, keep and taste: plants of their type without a cultivar's own
 * traits.
 */
export type KitchenKind = Kind & {
  /** Wants that they answer; never `green`, which any onion answers. */
  likes: readonly Like[];
  /** Whether they were bred to be sown in autumn and winter in the bed. */
  winters: boolean;
};

/** Onions to be planted for the kitchen: one kind, started one way on one day. */
export type KeepLot = {
  kind: KitchenKind;
  plan: Plan;
  /** Of the plan at the site, as every page and command says it. */
  summary: SeasonSummary;
  /** Wants that it answers. */
  likes: readonly Like[];
  bedM2: number;
  need: StartNeed;
  /** From lifting on it feeds the kitchen. */
  ready: DateSpread;
  /** The day on which the last of it is eaten or lost. */
  lastsUntil: DateSpread;
};

/** What must be had to start a lot; null where this way of starting asks for none. */
export type StartNeed = {
  /** That stand in the bed. */
  plants: number;
  seeds: number | null;
  sets: number | null;
  /** What these sets weigh. */
  setsKg: number | null;
  /** Bought plants come in bundles (see `standFigures`). */
  bundles: number | null;
  trayCells: number | null;
  compostL: number | null;
  rowM: number;
};

/** One month of the kitchen's year. */
export type KeepMonth = {
  year: number;
  /** 1…12. */
  month: number;
  needKg: number;
  /** In store at its end, all lots together, over the years tried. */
  storeKg: Spread;
  /** The middle of each lot's store at its end, in the order of the lots, kg. */
  lotsKg: readonly number[];
  /** Sprouted, rotten and dried away in it, in the middle year. */
  lostKg: number;
  /** Lots that are eaten from in most years, by their place in the list. */
  from: readonly number[];
  /** Share of the years in which it was supplied. */
  suppliedShare: number;
};

/** What feeds a kitchen while the store is bare. */
export type GapCloser = 'overwintered' | 'green-onions' | 'shallots' | 'bought';

/** Days for which no planting supplies enough in enough years. */
export type KeepGap = {
  from: DayNumber;
  to: DayNumber;
  /** Of these days, those on which at least half of the years go short; null: poor years alone do. */
  mostly: { from: DayNumber; to: DayNumber } | null;
  closedBy: readonly GapCloser[];
};

/** How fast a store loses onions against the usual (1), the middle of what its looks leave likely. */
export type StoreTaught = { looks: number; sproutingPace: number; rottingPace: number };

/** The least bed that keeps a kitchen in onions through a year, planting the same again each year. */
export type KeepYear = {
  household: Household;
  lots: readonly KeepLot[];
  bedM2: number;
  /** Twelve, from the month of the first lifting on. */
  months: readonly KeepMonth[];
  /** Share of the years tried in which every day outside the gaps was supplied. */
  suppliedYearsShare: number;
  gaps: readonly KeepGap[];
  /** Wants that nothing which grows here answers. */
  unmetLikes: readonly Like[];
  /** What the grower's looks at the store have taught of it; null where nobody has looked. */
  taught: StoreTaught | null;
  years: number;
  seed: number;
};
