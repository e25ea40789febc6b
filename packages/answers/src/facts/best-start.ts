import type { SeasonSummary, WhenAnswer } from '@neckfall/engine';

/** The season of the best start of a year that has a window; null for any other. */
export function bestStart({ starts, windows, best }: WhenAnswer): SeasonSummary | null {
  if (windows.length === 0) return null;
  return starts.find(({ dayOfYear }) => dayOfYear === best)?.summary ?? null;
}
