import { climateDayOf } from '../calendar/index.ts';
import type { StartMethod } from '../plant/index.ts';
import type { Site } from '../season/index.ts';

/**
 * Beds colder than this are wet or frozen, and nobody sows or plants in them, °C, mean of the day in the mean climate.
 * Of 100 published windows for sowing or planting outdoors five begin in a colder bed, and all have their middle in one of
 * 5.7 °C or more (test/choice/cold-beds.test.ts).
 */
export const workableBedC = 6;

/** Whether a bed can usually be sown or planted on a day; trays don't wait for it. */
export function isWorkable(site: Site, start: StartMethod, day: number): boolean {
  return start === 'raised-seedlings' || site.mean('none').soilMeanC[climateDayOf(day)] >= workableBedC;
}
