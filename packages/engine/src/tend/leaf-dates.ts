import { leafLimit } from '../plant/index.ts';
import {
  type DateSpread,
  dateSpread,
  dayTrace,
  longestSeason,
  type Plan,
  runnerOf,
  type Site,
} from '../season/index.ts';

/**
 * The day from which a plant in its bed has made so many leaves, by their number: 0, 1, 2, …; over the seasons in which
 * it made them. Plants that come with more have them from the day on which they are set out.
 */
export function leafDates(site: Site, plan: Plan): DateSpread[] {
  const runner = runnerOf(site, plan);
  const trace = dayTrace(longestSeason + 1);
  const days = Array.from({ length: leafLimit + 1 }, (): number[] => []);
  for (let season = 0; season < site.years; season++) {
    trace.length = 0;
    const { plantedOn } = runner.quickSeason(season, trace);
    let made = 0;
    for (let day = plantedOn; day < trace.length; day++)
      for (; made <= leafLimit && trace.leavesMade[day] >= made; made++) days[made].push(day);
  }
  return days.map((reached) => dateSpread(reached, plan.startDay, site.years));
}
