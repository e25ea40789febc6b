import {
  type OnionType,
  type Plan,
  planDefaults,
  type Runner,
  runnerOf,
  type Site,
  sowingFor,
  stage,
  typeForClass,
} from '../../packages/engine/src/index.ts';
import type { CalendarRow } from './calendar-rows.ts';
import { harvestLagDays } from './harvest-lag.ts';

/** Start, middle and end of a row's start window as plans. */
export function rowPlans(
  site: Site,
  row: CalendarRow,
  type: OnionType = typeForClass(site, row.class),
): Plan[] {
  const base = {
    ...planDefaults,
    type,
    start: row.start,
    densityPerM2: row.densityPerM2 ?? planDefaults.densityPerM2,
    setSizeMm: row.setSizeMm ?? planDefaults.setSizeMm,
    setStore: row.setStore ?? planDefaults.setStore,
  };
  return [0, 0.5, 1].map((share) => {
    const at = (window: { from: number; to: number } | null) =>
      window ? Math.round(window.from + share * (window.to - window.from)) : null;
    const plantOutDay = at(row.plantOutWindow);
    let startDay = at(row.startWindow);
    if (startDay === null) {
      if (plantOutDay === null) throw new Error(`${row.id}: no start window`);
      startDay = sowingFor(site, { ...base, startDay: plantOutDay, plantOutDay }, plantOutDay);
    }
    return { ...base, startDay, plantOutDay: row.start === 'raised-seedlings' ? plantOutDay : null };
  });
}

/** Neck fall of one plan in the mean climate, a day number; null where it does not come. */
export function meanNeckFall(runner: Runner, plan: Plan): number | null {
  runner.moveTo(plan.startDay, plan.plantOutDay);
  const outcome = runner.meanSeason();
  return outcome.reached === stage.fallen ? plan.startDay + outcome.fellOn : null;
}

/** Predicted lifting day of a row: the middle of the neck falls from its three starts, plus the stated lag. */
export function predictLifting(site: Site, row: CalendarRow): number | null {
  const plans = rowPlans(site, row);
  const runner = runnerOf(site, plans[0]);
  const falls = plans.map((plan) => meanNeckFall(runner, plan));
  return middleOf(falls, site, row);
}

export function middleOf(falls: (number | null)[], site: Site, row: CalendarRow): number | null {
  const came = falls.filter((fall) => fall !== null).sort((a, b) => a - b);
  return came.length < 2 ? null : came[came.length >> 1] + harvestLagDays(site, row);
}
