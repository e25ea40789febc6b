import {
  dayNumber,
  type Plan,
  type PlantValues,
  planDefaults,
  runnerOf,
  type Site,
  typeForClass,
} from '../../packages/engine/src/index.ts';
import { type CalendarRow, nominalYear } from '../score/calendar-rows.ts';
import { rowPlans } from '../score/predict.ts';
import { scoreSite } from '../score/sites.ts';
import { type BoltingCase, boltingCases } from './bolting-cases.ts';

// A calendar's verdict names no share. Shares and weights for it are ours.
const boltsShare = 0.55;
const otherShare = 0.03;
/** No crop is sure to bolt or not to: keeps one lost case from ruling the fit. */
const surest = 0.005;

/**
 * What the bolting fit makes small: weighted cross-entropy (natural log) of bolted shares in the mean climate,
 * over the trials and the calendars' verdicts. Sets are left out: they bring their cold from the store.
 */
export function boltingLoss(rows: readonly CalendarRow[], values: PlantValues): number {
  let loss = 0;
  for (const row of rows) {
    if (row.start === 'sets') continue;
    const site = scoreSite(row, values);
    const bolts = row.outcome === 'bolts';
    const weight = bolts ? 1.2 : row.outcome === 'good' || row.weight === 1 ? 0.5 : 0.3;
    loss += weight * crossEntropy(bolts ? boltsShare : otherShare, boltedShare(site, rowPlans(site, row)[1]));
  }
  for (const of of boltingCases) {
    const site = scoreSite({ latitudeDeg: of.lat, longitudeDeg: of.lon, elevationM: of.elevationM }, values);
    loss += of.weight * crossEntropy(of.bolted, boltedShare(site, planOf(site, of)));
  }
  return loss;
}

function planOf(site: Site, of: BoltingCase): Plan {
  const type = typeForClass(site, of.dayLengthClass);
  const plantOutDay = of.plantOut === undefined ? null : day(of.plantOut);
  return { ...planDefaults, type, start: of.start, startDay: day(of.date), plantOutDay };
}

function day(date: string): number {
  return dayNumber(nominalYear, Number(date.slice(0, 2)), Number(date.slice(3)));
}

function boltedShare(site: Site, plan: Plan): number {
  const runner = runnerOf(site, plan);
  runner.moveTo(plan.startDay, plan.plantOutDay);
  return runner.meanSeason().boltedShare;
}

function crossEntropy(observed: number, predicted: number): number {
  const p = Math.min(1 - surest, Math.max(surest, predicted));
  return -(observed * Math.log(p) + (1 - observed) * Math.log(1 - p));
}
