import type { DayNumber } from '../calendar/index.ts';
import type { GrowingOptions } from '../choice/index.ts';
import type { Site } from '../season/index.ts';
import type { Household } from './household.ts';
import type { KeepYear, KitchenKind } from './keep-year.ts';
import { kitchenWays } from './lot-starts.ts';
import { grownStarts } from './lot-survey.ts';
import { planKitchen } from './plan-kitchen.ts';
import type { LookedAt } from './store-taught.ts';

/** How far the work has come. */
export type KeepProgress = { done: number; total: number };

/**
 * The least bed that keeps a household in onions the year round, of the kinds that can be had, in the store as looks at lots
 * kept there before have taught it.
 */
export function keepYearOf(
  site: Site,
  kinds: readonly KitchenKind[],
  household: Household,
  today: DayNumber,
  options: GrowingOptions = {},
  looked: readonly LookedAt[] = [],
): KeepYear {
  const steps = keepYearSteps(site, kinds, household, today, options, looked);
  for (let step = steps.next(); ; step = steps.next()) if (step.done) return step.value;
}

/** The same work in pieces of some milliseconds, so that a worker can listen between them. */
export function* keepYearSteps(
  site: Site,
  kinds: readonly KitchenKind[],
  household: Household,
  today: DayNumber,
  options: GrowingOptions = {},
  looked: readonly LookedAt[] = [],
): Generator<KeepProgress, KeepYear, void> {
  const ways = kitchenWays(site).filter((way) =>
    kinds.some(({ type, start }) => type === way.type && start === way.start),
  );
  const total = ways.length + 1;
  const grown = [];
  for (const [done, way] of ways.entries()) {
    yield { done, total };
    grown.push(...grownStarts(site, way, today, options));
  }
  yield { done: ways.length, total };
  return planKitchen(site, kinds, household, grown, today, looked);
}
