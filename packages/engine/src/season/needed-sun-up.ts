import { climateYearDays } from '../calendar/index.ts';
import type { Site } from './site.ts';

const commonYear = 2027;

/**
 * Sun-up hours at which the photoperiod of a place reaches `photoperiodH`: the need of a plant in what people see, h.
 * Taken on the day of the year that comes nearest, and where none comes near, as far above or below its sun-up hours.
 */
export function neededSunUpH(site: Pick<Site, 'dayTable'>, photoperiodH: number): number {
  const { sunUpH, photoperiodH: hours } = site.dayTable(commonYear);
  let best = 0;
  for (let day = 1; day < climateYearDays; day++) {
    if (Math.abs(hours[day] - photoperiodH) < Math.abs(hours[best] - photoperiodH)) best = day;
  }
  return sunUpH[best] + photoperiodH - hours[best];
}
