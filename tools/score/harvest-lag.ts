import type { Site } from '../../packages/engine/src/index.ts';
import type { CalendarRow } from './calendar-rows.ts';

/** Lifting follows neck fall by some days everywhere; where summers are dry, bulbs are left to cure in the field. */
const lag = { usualDays: 5, dryDays: 12, dryBelowMmPerMonth: 40 } as const;

/** Days from neck fall to the lifting that calendars print, by method and climate, never by row. */
export function harvestLagDays(site: Site, row: CalendarRow): number {
  if (row.class !== 'long' || !row.harvestWindow) return lag.usualDays;
  const month = Math.floor((((row.harvestWindow.from + row.harvestWindow.to) / 2) % 365) / 30.5) % 12;
  return site.climate.rainMm[month] < lag.dryBelowMmPerMonth ? lag.dryDays : lag.usualDays;
}
