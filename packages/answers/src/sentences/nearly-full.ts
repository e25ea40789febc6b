import type { SeasonSummary } from '@neckfall/engine';

/** Small bulbs that are full-sized in this share of years are told as nearly so: there is no cliff at the limit. */
const nearlyShare = 0.3;

/** Whether bulbs are small in most years, but not by much. */
export function isNearlyFull({ outcome, gamble, seasonShares }: SeasonSummary): boolean {
  return outcome === 'small' && !gamble && seasonShares.good >= nearlyShare;
}
