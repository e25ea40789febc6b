import { leastBulbMm, type StandOn } from '@neckfall/answers';
import { type Observation, parseDay, type SeasonSummary, startWays } from '@neckfall/engine';
import type { SeasonAhead } from '../../../worker/season-ahead.ts';

/** What is asked of a crop first: it follows the season. */
export type Question = 'leavesGreen' | 'bulbMm' | 'topsOverShare' | 'weighedKg';

/** Days; common practice, no source. */
const days = {
  /** A bed is made ready, and watered, a few days before. */
  before: 4,
  /** Tops are looked at from a week before the first go over, and bulbs weighed once all have had time to. */
  topsFrom: 7,
  weighFrom: 14,
  /** Bulbs dried off are weighed and a note is made months later still. */
  after: 150,
  /** A crop without an end of its own. */
  longest: 400,
} as const;

/** Whether there is something to note of a crop by now, or still. */
export function isUnderWay({ plan, neckFall }: SeasonSummary, today: number): boolean {
  const end = neckFall.days ? neckFall.days.p90 + days.after : plan.startDay + days.longest;
  return today >= plan.startDay - days.before && today <= end;
}

/** What to ask first; null while nothing shows yet. */
export function questionOn(
  { summary, stand }: Pick<SeasonAhead, 'summary' | 'stand'>,
  seen: readonly Observation[],
): Question | null {
  const { plan, emergence, onset, neckFall } = summary;
  const { day } = stand;
  if (seen.some((one) => one.lifted || (one.topsOverShare ?? 0) >= 1)) return 'weighedKg';
  if (neckFall.days && day > neckFall.days.p90 + days.weighFrom) return 'weighedKg';
  const areTopsNear = neckFall.days && day >= neckFall.days.p10 - days.topsFrom;
  if (areTopsNear || seen.some((one) => (one.topsOverShare ?? 0) > 0)) return 'topsOverShare';
  if (onset.days && day >= onset.days.p50 && areBulbsSeen(stand)) return 'bulbMm';
  const isUp = startWays[plan.start].from === 'plants' || (emergence.days && day >= emergence.days.p10);
  const isSeenUp = seen.some((one) => (one.leavesGreen ?? 0) > 0);
  return isUp || isSeenUp ? 'leavesGreen' : null;
}

function areBulbsSeen({ bulbMm }: StandOn): boolean {
  return bulbMm !== null && bulbMm.low >= leastBulbMm;
}

/** What a count begins with: that of last time, else what should be seen, so that few taps lead to it. */
export function likelyValue(
  question: Question,
  { leavesGreen, bulbMm, fallenShare }: StandOn,
  seen: readonly Observation[],
): number | null {
  const last = seen.find((one) => one[question] !== undefined)?.[question];
  if (last !== undefined) return last;
  const expected = question === 'leavesGreen' ? leavesGreen : question === 'bulbMm' ? bulbMm : null;
  if (expected) return Math.round((expected.low + expected.high) / 2);
  if (question === 'topsOverShare') return Math.round(fallenShare * 10) / 10;
  return question === 'leavesGreen' ? 2 : null;
}

/** Days on which something of a crop may have been seen. */
export function daysToNote({ plan }: SeasonSummary, today: number): { min: number; max: number } {
  return { min: plan.startDay - days.longest, max: today };
}

/** Day number of an entry; restoring left no other dates. */
export function dayOf({ date }: Pick<Observation, 'date'>): number {
  return parseDay(date) ?? 0;
}
