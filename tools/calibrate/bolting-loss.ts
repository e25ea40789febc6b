import { boltedShare, onionTypes, type PlantValues, runnerOf } from '../../packages/engine/src/index.ts';
import { answered } from '../score/answered.ts';
import { pairResults } from '../score/bolting-pairs.ts';
import type { CalendarRow } from '../score/calendar-rows.ts';
import { rowPlans } from '../score/predict.ts';
import { answeredOf, everywhere, type Places } from '../score/published-plan.ts';
import { sapporo, sapporoResults, sapporoSets } from '../score/set-trial.ts';
import { scoreSite } from '../score/sites.ts';
import { boltingCases } from './bolting-cases.ts';

// A calendar's verdict names no share. Shares and weights for it are ours.
const boltsShare = 0.7;
const otherShare = 0.03;
/** Two crops of a pair should differ by this share of plants. */
const clearPair = 0.2;
const pairPrice = 6;
const setPrice = 2;
/** Without any cold next to no plant bolts. */
const coldlessShare = 0.015;
const coldlessPrice = 60;
const clearlyBolts = 0.6;
const clearlyStands = 0.15;
const wrongPrice = 5;
/** No crop is sure to bolt or not to: keeps one lost case from ruling the fit. */
const surest = 0.005;

/**
 * What the bolting fit makes small: weighted cross-entropy (natural log) of bolted shares as answered,
 * over the trials and the calendars' verdicts, plus the pairs of crops of which one bolts and the other stands.
 * Calendars of sets are left out: their sizes and stores are not told. Sapporo's are in.
 */
export function boltingLoss(
  rows: readonly CalendarRow[],
  values: PlantValues,
  places: Places = everywhere,
): number {
  let loss = 0;
  for (const row of rows) {
    if (row.start === 'sets') continue;
    const site = scoreSite(row, values);
    const bolts = row.outcome === 'bolts';
    const weight = bolts ? 1.2 : row.outcome === 'good' || row.weight === 1 ? 0.5 : 0.3;
    const share = answered(site, runnerOf(site, rowPlans(site, row)[1])).boltedShare;
    // The verdict turns at 25 %; weather years spread round the mean climate, hence the room on both sides.
    const wrong = bolts ? Math.max(0, clearlyBolts - share) : Math.max(0, share - clearlyStands);
    loss += weight * (crossEntropy(bolts ? boltsShare : otherShare, share) + wrongPrice * wrong);
  }
  for (const of of boltingCases.filter(places))
    loss += of.weight * crossEntropy(of.bolted, answeredOf(of, values).boltedShare);
  for (const { pair, bolts, stands } of pairResults(values, places))
    if (pair.bolts.start !== 'sets') loss += pairPrice * Math.max(0, clearPair - (bolts - stands));
  if (places(sapporo))
    for (const [i, { bolted }] of sapporoResults(values).entries())
      loss += setPrice * crossEntropy(sapporoSets[i].bolted, bolted);
  for (const type of onionTypes) {
    const { vernalHalfD, vernalSpreadD } = values.types[type];
    loss += coldlessPrice * Math.max(0, boltedShare(0, vernalHalfD, vernalSpreadD) - coldlessShare);
  }
  return loss;
}

function crossEntropy(observed: number, predicted: number): number {
  const p = Math.min(1 - surest, Math.max(surest, predicted));
  return -(observed * Math.log(p) + (1 - observed) * Math.log(1 - p));
}
