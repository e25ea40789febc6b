import type { CommonYearDay, DayNumber } from '../calendar/index.ts';
import type { DayLengthClass, OnionType, StartMethod, Verdict } from '../plant/index.ts';
import type { Plan } from './plan.ts';

/** Percentiles over the seasons in which a thing happened; null in its place where it happened in none. */
export type Spread<Value extends number = number> = { p10: Value; p50: Value; p90: Value };

/** The share of seasons in which a date came, and its day numbers in these; null where it came in none. */
export type DateSpread = { share: number; days: Spread<DayNumber> | null };

/** Onset, with the hours of day on the middle date. */
export type OnsetSpread = {
  share: number;
  days: (Spread<DayNumber> & { sunUpH: number; photoperiodH: number }) | null;
};

/** Share of seasons by verdict; the shares sum to 1. */
export type SeasonShares = Record<Verdict, number>;

/** Why one plan ends as it does. */
export type PlanReasonCode =
  | 'good'
  | 'small-few-leaves'
  | 'small-season'
  | 'days-too-short'
  | 'never-up'
  | 'too-late'
  | 'winter-lifted'
  | 'winter-cold'
  | 'bolts-sets'
  | 'bolts-cold'
  | 'unripe-autumn';

/** Why a year of starts has a window, or none. */
export type YearReasonCode = 'window' | `no-window-${Verdict}`;

/** The numbers that decided, of the middle season: rounded as they are said. */
type ReasonValues = {
  leaves: number;
  diameterMm: number;
  sunUpH: number;
  longestSunUpH: number;
  neededSunUpH: number;
  boltedTenths: number;
  killedTenths: number;
  type: OnionType;
  start: StartMethod;
};

/** Why an answer is what it is: the code of a message, with the numbers that decided. */
export type Reason<Code extends string = PlanReasonCode> = { code: Code; values: ReasonValues };

/** One plan over many years. Bulb figures are of the median plant. */
export type SeasonSummary = {
  plan: Plan;
  /** Weather years tried. */
  years: number;
  seed: number;
  /** Emergence of seed, sprouting of sets; bought plants: the planting day. */
  emergence: DateSpread;
  /** Raised seedlings only. */
  plantOut: DateSpread | null;
  onset: OnsetSpread;
  neckFall: DateSpread;
  /** Photoperiod (civil twilight) above which these plants are turned to bulbs here, h. */
  needPhotoperiodH: number;
  leavesMadeAtOnset: Spread | null;
  leavesGreenAtOnset: Spread | null;
  /** Shoot dry matter at onset, g a plant. */
  shootGAtOnset: Spread | null;
  /** Fresh bulb, g. */
  bulbMassG: Spread | null;
  bulbDiameterMm: Spread | null;
  /** Coefficient of variation of bulb mass between plants. */
  plantSpreadCv: number;
  totalKgM2: Spread;
  /** Bulbs of at least 38 mm on plants that neither bolted nor died. */
  marketableKgM2: Spread;
  boltedPlantsShare: Spread | null;
  winterKilledPlantsShare: Spread | null;
  /** Of these, lifted out of wet ground by frost. */
  frostLiftedPlantsShare: Spread | null;
  /** Share of the seeds or plants that stand after emergence. */
  emergedShare: number;
  thirstyDays: Spread | null;
  seasonShares: SeasonShares;
  outcome: Verdict;
  /** Good is the likeliest single outcome but comes in under half the seasons. */
  gamble: boolean;
  reason: Reason;
};

/** One day of the median season. */
export type DayRow = {
  day: DayNumber;
  sunUpH: number;
  photoperiodH: number;
  tempMeanC: number;
  leavesMade: number;
  leavesGreen: number;
  shootG: number;
  bulbG: number;
  /** 0…1, onset at 1. */
  bulbing: number;
  /** 0…1, neck fall at 1. */
  ripening: number;
};

/**
 * Why nobody starts on a day, whatever would come of it: a bed too cold to work, seedlings that would stand too long in
 * their trays, no sound sets or no plants to be had.
 */
export type Hindrance = 'cold-bed' | 'long-tray' | 'no-sets' | 'no-plants';

/** One of the 52 week starts of the year, at the next day it comes round. */
export type StartTrial = {
  /** 1, 8, …, 358. */
  dayOfYear: CommonYearDay;
  hindrance: Hindrance | null;
  summary: SeasonSummary;
};

/** A run of week starts that end well; `from` may be later in the year than `to`. Days of the year. */
export type StartWindow = { from: CommonYearDay; to: CommonYearDay; best: CommonYearDay };

/** The year tried week by week. */
export type WhenAnswer = {
  starts: StartTrial[];
  windows: StartWindow[];
  /** The start of the year that is worth most: the best of a window, or where there is none what does least badly; 1, 8, …, 358. */
  best: CommonYearDay;
  reason: Reason<YearReasonCode>;
};

/** The best a class does at a place. */
export type ClassAnswer = {
  class: DayLengthClass;
  type: OnionType;
  verdict: Verdict;
  gamble: boolean;
  /** Whether shops have this type and growers know it at the place's latitude. */
  isAtHome: boolean;
  bestStart: StartMethod;
  summary: SeasonSummary;
  reason: Reason;
};

/** What a start is still worth when made today or soon after. */
export type TodayAnswer = {
  start: StartMethod;
  class: DayLengthClass;
  /** What a packet of the class holds for this start. */
  type: OnionType;
  /** Last day of the current window; null where it is not, or no longer, in time. */
  stillGoodUntil: DayNumber | null;
  verdict: Verdict;
  /** First day of the next window when the current is closed; null where there is none. */
  nextFrom: DayNumber | null;
};
