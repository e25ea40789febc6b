import type { Plan, PlanForm } from '../season/index.ts';
import type { Fact } from './acts.ts';
import type { RunCause } from './causes.ts';
import type { Trial } from './season-facts.ts';
import type { Change } from './what-if.ts';

/** A season in which a cause is taken away. */
export type Otherwise = { trial: Trial; change: Change };

/**
 * How a cause is tried. `told`: it lies in the season as told, and `without` takes it away; else it may have been there
 * unsaid, `within` puts it in, and `change` would have kept it out.
 */
export type CauseTrial = {
  cause: RunCause;
  /** Told: how readily a cause is one, 0…1. Unsaid: how often it is there. All memory, adjustable. */
  prior: number;
  /** What it does to a season, where that is not all that the cause can do. */
  acts?: readonly Fact[];
} & (
  | { told: true; without: readonly Otherwise[] }
  | { told: false; within: readonly Trial[]; change: Change }
);

/** A season as told, and the fields of its plan that the grower said. */
export type Saying = { trial: Trial; said: ReadonlySet<keyof PlanForm> };

/** A trial with fields of its plan changed. */
export function changed<Of extends { plan: Plan }>(trial: Of, fields: Partial<PlanForm>): Of {
  // each change is one of a field that the plan's start has
  return { ...trial, plan: { ...trial.plan, ...fields } as Plan };
}
