import type { Observation } from '@neckfall/engine';
import { dayOf } from './question.ts';

/** Counts of leaves in the order of their days; of one day that noted last. */
export function leafCounts(seen: readonly Observation[]): { day: number; leaves: number }[] {
  const counts = new Map<number, number>();
  for (const entry of [...seen].reverse()) {
    if (entry.leavesGreen !== undefined) counts.set(dayOf(entry), entry.leavesGreen);
  }
  return [...counts].map(([day, leaves]) => ({ day, leaves }));
}
