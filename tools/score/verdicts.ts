import { type PlantValues, runPlan, type Verdict, verdicts } from '../../packages/engine/src/index.ts';
import type { CalendarRow } from './calendar-rows.ts';
import { rowPlans } from './predict.ts';
import { scoreSite } from './sites.ts';

export type VerdictPair = { row: CalendarRow; published: Verdict; predicted: Verdict };

/** Verdict of the middle of a row's start window, over weather years. */
export function verdictPair(row: CalendarRow, values: PlantValues): VerdictPair {
  const site = scoreSite(row, values);
  return { row, published: row.outcome ?? 'good', predicted: runPlan(site, rowPlans(site, row)[1]).outcome };
}

/** Mean over published verdicts of the share predicted right; verdicts without rows do not count. */
export function balancedAccuracy(pairs: readonly VerdictPair[]): number {
  const shares = verdicts.flatMap((verdict) => {
    const of = pairs.filter((pair) => pair.published === verdict);
    return of.length === 0 ? [] : [of.filter((pair) => pair.predicted === verdict).length / of.length];
  });
  return shares.reduce((a, b) => a + b, 0) / shares.length;
}
