import { type Outcome, stage } from './outcome.ts';
import type { Plan } from './plan.ts';
import { runnerOf } from './run.ts';
import { longestSeason } from './season-end.ts';
import { calendarYear, driverIndex, type Site } from './site.ts';
import type { DayRow } from './summary.ts';
import { dayTrace } from './trace.ts';

/**
 * Day by day, the weather year whose season ends nearest the median: by neck fall, else onset, else its length.
 * Days before planting out or emergence have no plant in the bed and are left out.
 */
export function medianSeasonDays(site: Site, plan: Plan): DayRow[] {
  const runner = runnerOf(site, plan);
  const order = Array.from({ length: site.years }, (_, year) => ({ year, key: endKey(runner.season(year)) }));
  order.sort((a, b) => a.key - b.key || a.year - b.year);
  const { year } = order[order.length >> 1];
  const trace = dayTrace(longestSeason + 1);
  const outcome = runner.season(year, trace);
  const drivers = site.generated(plan.cover, calendarYear(plan.startDay));
  const at = driverIndex(site, plan.startDay, year);
  const photoAt = plan.startDay - runner.table.firstDay;
  const rows: DayRow[] = [];
  for (let day = outcome.plantedOn; day < trace.length; day++) {
    rows.push({
      day: plan.startDay + day,
      sunUpH: runner.table.sunUpH[photoAt + day],
      photoperiodH: runner.table.photoperiodH[photoAt + day],
      tempMeanC: drivers.tempMeanC[at + day],
      leavesMade: trace.leavesMade[day],
      leavesGreen: trace.leavesGreen[day],
      shootG: trace.shootG[day],
      bulbG: trace.bulbG[day],
      bulbing: trace.bulbing[day],
      ripening: trace.ripening[day],
    });
  }
  return rows;
}

// Seasons that went further come later in the order; within a stage, the later date.
function endKey(o: Outcome): number {
  const furthest =
    o.reached === stage.fallen ? o.fellOn : o.reached === stage.onset ? 1000 + o.onsetOn : 2000;
  return furthest;
}
