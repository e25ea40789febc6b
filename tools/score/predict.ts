import {
  type Plan,
  planDefaults,
  runnerOf,
  type Site,
  sowingFor,
  typeForClass,
} from '../../packages/engine/src/index.ts';
import { answered } from './answered.ts';
import type { CalendarRow } from './calendar-rows.ts';
import { harvestLagDays } from './harvest-lag.ts';

/** Start, middle and end of a row's start window as plans. */
export function rowPlans(site: Site, row: CalendarRow): Plan[] {
  const base = {
    ...planDefaults,
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
      const type = typeForClass(site, row.class, row.start, plantOutDay);
      startDay = sowingFor(site, { ...base, type, startDay: plantOutDay, plantOutDay }, plantOutDay);
    }
    const type = typeForClass(site, row.class, row.start, startDay);
    return { ...base, type, startDay, plantOutDay: row.start === 'raised-seedlings' ? plantOutDay : null };
  });
}

/** Predicted lifting day of a row: the middle of the answered neck falls from its three starts, plus the stated lag. */
export function predictLifting(site: Site, row: CalendarRow): number | null {
  const falls = rowPlans(site, row).map((plan) => neckFallOf(site, plan));
  const came = falls.filter((fall) => fall !== null).sort((a, b) => a - b);
  return came.length < 2 ? null : came[came.length >> 1] + harvestLagDays(site, row);
}

/** The same from the middle start alone, which is nearly always the middle one of the falls: enough for a fit. */
export function glanceLifting(site: Site, row: CalendarRow): number | null {
  const fall = neckFallOf(site, rowPlans(site, row)[1]);
  return fall === null ? null : fall + harvestLagDays(site, row);
}

function neckFallOf(site: Site, plan: Plan): number | null {
  const { fellOn } = answered(site, runnerOf(site, plan));
  return fellOn === null ? null : plan.startDay + Math.round(fellOn);
}
