import { climateYearDays, type DayNumber, dayNumber } from '../calendar/index.ts';
import { coldBed } from '../choice/index.ts';
import type { Site } from '../season/index.ts';

/** Shortest day of a common year that is followed by a whole one. */
export function shortestDay({ climate }: Site): DayNumber {
  return climate.latitudeDeg < 0 ? dayNumber(2027, 6, 21) : dayNumber(2027, 12, 21);
}

/** Beds that can be worked until so long after the shortest day have no winter, days. */
const lastFreeze = 60;

/** First day after the shortest on which beds can be worked again; null where winter does not stop work, or never ends. */
export function springDay(site: Site): DayNumber | null {
  const shortest = shortestDay(site);
  for (let day = shortest; day < shortest + lastFreeze; day++) {
    const cold = coldBed(site, 'direct-seed', day);
    if (cold) return cold.workableFrom;
  }
  return null;
}

/** Days from the first on which beds can be worked to another, 0…364; null where there is no such day. */
export function daysIntoSpring(site: Site, day: DayNumber): number | null {
  const spring = springDay(site);
  return spring === null ? null : (((day - spring) % climateYearDays) + climateYearDays) % climateYearDays;
}
