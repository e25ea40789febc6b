import type { DailyRecord } from '@neckfall/engine';

/** Days of a record before its forecast. @param forecastFrom a day number; null: none of it was forecast */
export function daysMeasured({ firstDay, days }: DailyRecord, forecastFrom: number | null): number {
  return forecastFrom === null ? days : Math.min(days, Math.max(0, forecastFrom - firstDay));
}
