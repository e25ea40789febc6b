import type { DayNumber } from '../calendar/index.ts';
import type { SeasonSummary, Site } from '../season/index.ts';
import type { GrowingOptions } from './growing-options.ts';
import type { Kind } from './kind.ts';
import { surveyWays } from './survey-ways.ts';

/** The first of some kinds that is in time today: its place among them, and its season as it would be started now. */
export type KindNow = { at: number; summary: SeasonSummary; until: DayNumber };

/** A list is told by its first kinds. */
const kindsLookedAt = 8;

/** Looks through the first of some kinds in their order; null where none of them is in time today. */
export function kindNow(
  site: Site,
  kinds: readonly Pick<Kind, 'type' | 'traits' | 'start'>[],
  today: DayNumber,
  options: GrowingOptions,
): KindNow | null {
  for (const [at, { type, traits, start }] of kinds.slice(0, kindsLookedAt).entries()) {
    const way = { type, traits, start, isUsual: () => true };
    const now = surveyWays(site, [way], today, options).now();
    if (now) return { at, ...now };
  }
  return null;
}
