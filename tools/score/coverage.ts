import { defaultPlantValues, type PlantValues, runPlan } from '../../packages/engine/src/index.ts';
import type { CalendarRow } from './calendar-rows.ts';
import { harvestLagDays } from './harvest-lag.ts';
import { rowPlans } from './predict.ts';
import { scoreSite } from './sites.ts';

/**
 * Share of rows (by weight) whose harvest window meets the 10–90 % band of predicted lifting, from the
 * earliest start's p10 to the latest start's p90.
 */
export function bandCoverage(rows: readonly CalendarRow[], values: PlantValues = defaultPlantValues): number {
  let inside = 0;
  let weight = 0;
  for (const row of rows) {
    const site = scoreSite(row, values);
    const falls = rowPlans(site, row).map((plan) => runPlan(site, plan).neckFall);
    const lag = harvestLagDays(site, row);
    const early = falls.flatMap((fall) => (fall.p10 === null ? [] : [fall.p10 + lag]));
    const late = falls.flatMap((fall) => (fall.p90 === null ? [] : [fall.p90 + lag]));
    weight += row.weight;
    if (early.length === 0 || !row.harvestWindow) continue;
    const from = Math.min(...early);
    const middle = (row.harvestWindow.from + row.harvestWindow.to) / 2;
    const shifted = middle + 365 * Math.round((from - middle) / 365);
    if (shifted >= from && shifted <= Math.max(...late)) inside += row.weight;
  }
  return inside / weight;
}
