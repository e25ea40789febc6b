import {
  enoughDryG,
  limits,
  type Plan,
  type PlantValues,
  referenceBulbG,
  runnerOf,
  type Site,
  smallBulbG,
  type Verdict,
} from '../../packages/engine/src/index.ts';
import { answered } from '../score/answered.ts';
import type { CalendarRow } from '../score/calendar-rows.ts';
import { gardenSizes } from '../score/garden-sizes.ts';
import { rowPlans } from '../score/predict.ts';
import type { Places } from '../score/published-plan.ts';
import { sapporo, sapporoResults, sapporoSets } from '../score/set-trial.ts';
import { scoreSite } from '../score/sites.ts';
import { sizeErrors, sizeResults } from '../score/size-scores.ts';

// All prices here are choices of ours.
const verdictPrice = 6;
const unripePrice = 8;
const levelPrice = 14;
const shapePrice = 8;
const setPrice = 3;
const gardenPrice = 5;
const farPrice = 4;
/** A case is met when it clears its limit by this much (natural log). */
const clearance = 0.1;
const capLog = 0.7;

const over = (log: number, free: number) => Math.max(0, Math.min(1, Math.abs(log)) - free);
const mean = (of: readonly number[]) => of.reduce((a, b) => a + b, 0) / Math.max(1, of.length);

/** Sizes of trials, sets, gardens and calendars' verdicts as answered, each 0 where it is met. */
export function sizeLoss(rows: readonly CalendarRow[], values: PlantValues, places: Places): number {
  const { levels, shapes } = sizeErrors(sizeResults(values, places));
  const gardens = gardenSizes(values, places);
  return (
    levelPrice * mean([...levels.values()].map((log) => over(log, 0.1))) +
    shapePrice * mean([...shapes.values()].map((logs) => mean(logs.map((log) => over(log, 0.05))))) +
    setPrice * setShape(values, places) +
    gardenPrice *
      mean(gardens.filter(({ isFar }) => !isFar).map(({ mm, from, to }) => outside(mm, from, to))) +
    farPrice * mean(gardens.filter(({ isFar }) => isFar).map(({ mm, from, to }) => outside(mm, from, to))) +
    verdictLoss(rows, values)
  );
}

/** Natural log by which a bulb lies outside a span of diameters, at most 1. */
function outside(mm: number, from: number, to: number): number {
  if (mm <= 0) return 1;
  return Math.min(1, 3 * Math.max(0, Math.log(from / mm), Math.log(mm / to)));
}

/** Sizes by set at Sapporo, whose crops were poor: ratios alone. */
function setShape(values: PlantValues, places: Places): number {
  if (!places(sapporo)) return 0;
  const logs = sapporoResults(values).map(({ massG }, i) =>
    Math.log(Math.max(1, massG) / sapporoSets[i].massG),
  );
  return mean(logs.map((log) => over(log - mean(logs), 0.05)));
}

function verdictLoss(rows: readonly CalendarRow[], values: PlantValues): number {
  let loss = 0;
  let weight = 0;
  for (const row of rows) {
    if (row.outcome === 'bolts' || row.outcome === 'winter-killed' || row.outcome === 'no-bulb') continue;
    // Failures are few; each kind should weigh about as much as the good crops together.
    const w = row.outcome === 'not-ripe' ? 10 : row.outcome === 'small' ? 4 : 3;
    weight += w;
    const site = scoreSite(row, values);
    loss += w * verdictPriceOf(site, rowPlans(site, row)[1], row.outcome ?? 'good');
  }
  return loss / Math.max(1, weight);
}

function verdictPriceOf(site: Site, plan: Plan, published: Verdict): number {
  const { onsetOn, fellOn, bulbG, bulbDryG } = answered(site, runnerOf(site, plan));
  if (published === 'not-ripe') return onsetOn !== null && fellOn === null ? 0 : unripePrice;
  if (fellOn === null) return published === 'small' ? 0 : verdictPrice * capLog;
  const byEye = bulbG / smallBulbG(plan.type, plan.densityPerM2);
  // A bulb well above any place's limit needs no reference, which is what costs most here.
  const isClear = bulbDryG >= limits.smallShare * enoughDryG(site, plan.type) * Math.exp(clearance);
  const byPlace =
    isClear && published !== 'small' ? byEye : bulbDryG / (limits.smallShare * referenceBulbG(site, plan));
  const log = Math.log(Math.max(0.05, Math.min(byPlace, byEye)));
  const short = published === 'small' ? log + clearance : clearance - log;
  return verdictPrice * Math.min(capLog, Math.max(0, short));
}
