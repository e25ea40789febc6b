import type { DayNumber } from '../calendar/index.ts';
import type { StoreClimate } from '../keep/index.ts';
import type { Plan, PlanForm } from '../season/index.ts';
import type { Cause } from './causes.ts';
import type { Evidence } from './evidence.ts';
import type { Question, Said } from './questions.ts';
import type { WhyCaution, WhyRescue } from './rescue.ts';
import type { Symptom } from './symptoms.ts';
import type { Change, GrownSo, WhatIf } from './what-if.ts';

/** What was seen and done, as far as the grower says. */
export type WhyAsked = {
  plan: Plan;
  /** Fields of the plan that the grower said; what was not said may have been otherwise. */
  said: ReadonlySet<keyof PlanForm>;
  /** The days are as remembered, a fortnight off at most. */
  isAbout: boolean;
  /** Next year's plan comes after this day. */
  today: DayNumber;
  /** One at least; of more than `mostSymptoms` the first are heeded. */
  symptoms: readonly Symptom[];
  /** Day on which it was seen in store; null: not said, four months from lifting. */
  noticed: DayNumber | null;
  /** Air of the store and how long the kind keeps, months. */
  store: StoreClimate;
  isStoreSaid: boolean;
  keepsMonths: readonly [number, number];
  answers: Said;
};

/** A cause with its chance, what speaks for and against it, and the season without it. */
export type CauseFound = {
  cause: Cause;
  /** 0…1. */
  probability: number;
  for: readonly Evidence[];
  against: readonly Evidence[];
  /** Null where no run can do without it. */
  whatIf: WhatIf | null;
};

/** What can be saved of a crop that failed, and what it failed by. */
export type WhyAnswer = {
  /** Of the symptoms together: the strictest that any asks for. */
  rescue: WhyRescue;
  /** Likeliest first; those of two in a hundred and more, the first always. */
  causes: readonly CauseFound[];
  /** Probability of something that can't be known, and of causes too unlikely to be told; with those of `causes` it makes 1. */
  unseen: number;
  /** Share of the seasons as told that show what was seen, the mean of the symptoms: so often it comes anyway. */
  usual: number;
  /** The question that would tell most; null: none that is worth it, or enough were asked. */
  ask: Question | null;
  asGrown: GrownSo;
  /** The plan of next year, on its days, with what the leading cause asks to do otherwise; null: nothing that a plan says. */
  nextYear: { plan: Plan; change: Change | null; grown: GrownSo };
  cautions: readonly WhyCaution[];
  years: number;
};
