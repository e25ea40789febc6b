import { type PlantValues, runPlan } from '../../packages/engine/src/index.ts';
import type { CalendarRow } from './calendar-rows.ts';
import { harvestLagDays } from './harvest-lag.ts';
import { rowPlans } from './predict.ts';
import { scoreSite } from './sites.ts';

/**
 * Whether the middle of a row's harvest window lies in the 10–90 % band of predicted lifting, from the earliest
 * start's p10 to the latest start's p90.
 */
export function bandHolds(row: CalendarRow, values: PlantValues): boolean {
  const site = scoreSite(row, values);
  const falls = rowPlans(site, row).map((plan) => runPlan(site, plan).neckFall);
  const lag = harvestLagDays(site, row);
  const early = falls.flatMap(({ days }) => (days ? [days.p10 + lag] : []));
  const late = falls.flatMap(({ days }) => (days ? [days.p90 + lag] : []));
  if (early.length === 0 || !row.harvestWindow) return false;
  const from = Math.min(...early);
  const middle = (row.harvestWindow.from + row.harvestWindow.to) / 2;
  const shifted = middle + 365 * Math.round((from - middle) / 365);
  return shifted >= from && shifted <= Math.max(...late);
}
