import type { DayNumber } from '../calendar/index.ts';
import { plantingOut } from './nursery.ts';
import { stage } from './outcome.ts';
import { type Plan, startedOn } from './plan.ts';
import { runnerOf } from './run.ts';
import type { Site } from './site.ts';

const shortestNurseryDays = 28;

/**
 * Sowing day for raised seedlings that are to go out on `plantOutDay`: the latest, in whole weeks, from which
 * the mean climate brings them to planting size by then; the earliest allowed where none does.
 */
export function sowingFor(site: Site, plan: Plan, plantOutDay: DayNumber): DayNumber {
  const earliest = plantOutDay - 7 * plantingOut.latestWeeks;
  const runner = runnerOf(site, startedOn(plan, earliest));
  for (let day = plantOutDay - shortestNurseryDays; day > earliest; day -= 7) {
    runner.moveTo(day, plantOutDay);
    const outcome = runner.meanSeason();
    if (outcome.reached >= stage.planted && outcome.leavesPlanted >= plantingOut.leaves) return day;
  }
  return earliest;
}
