import {
  dayNumber,
  judge,
  limits,
  type OnionType,
  type PlantValues,
  planDefaults,
  runnerOf,
} from '../../packages/engine/src/index.ts';
import { type CalendarRow, nominalYear } from '../score/calendar-rows.ts';
import { growthRoom } from '../score/growth-rooms.ts';
import { below15, below25, type Spot } from '../score/hard-tests.ts';
import { predictLifting } from '../score/predict.ts';
import { scoreSite } from '../score/sites.ts';
import { missOf } from '../score/timing.ts';

// All prices and caps here are choices of ours; they are what was changed by hand between runs.
/** Weight of a row nobody read in full, added to the row's own. */
const leastWeight = 0.1;
/** A row that cannot be met may not rule the fit, days. */
const missCapDays = 24;
const centreCapDays = 45;
/** Price of a day from the middle of the window beside a day outside it. */
const centrePrice = 0.3;

/**
 * What the timing fit makes small, in days: how far predicted liftings lie from the published windows, plus
 * prices for what growth rooms and common practice rule out.
 */
export function timingLoss(rows: readonly CalendarRow[], values: PlantValues): number {
  let loss = 0;
  let weight = 0;
  for (const row of rows) {
    const miss = missOf(row, row.harvestWindow!, predictLifting(scoreSite(row, values), row));
    const w = leastWeight + row.weight ** 1.5;
    weight += w;
    loss +=
      w *
      (Math.min(miss.missDays, missCapDays) +
        centrePrice * Math.min(Math.abs(miss.centreDays), centreCapDays));
  }
  return loss / weight + roomPrice(values) + tropicsPrice(values);
}

/** Tropical reds: Wickramasinghe et al. 2000; none at 11.5 h: Tesfay et al. 2011. Prices ours. */
function roomPrice(values: PlantValues): number {
  const room = (lampHours: number, tempC: number, shadeShare = 0) =>
    growthRoom({ type: 'tropical-short', lampHours, tempC, shadeShare }, values);
  const warm = 31.5;
  const twelve = room(12, warm);
  const shaded = room(12, warm, 0.5).onsetDays;
  return (
    0.3 * Math.max(0, (twelve.onsetDays ?? 60) - 14) +
    0.15 * Math.max(0, (twelve.ripeDays ?? 90) - 42) +
    (room(11, warm).onsetDays === null ? 0 : 3) +
    (room(11.5, 25).onsetDays === null ? 0 : 1) +
    (shaded === null ? 0 : 1 - Math.min(shaded, 100) / 120)
  );
}

/** Good crops of long-day kinds near the equator: common practice, no source. Prices ours. */
function tropicsPrice(values: PlantValues): number {
  return (
    0.12 * goodCrops(below15, ['intermediate'], values) +
    0.05 * goodCrops(below25, ['early-long', 'northern-long'], values)
  );
}

/** About the best bulb of a tropical lowland, g dry matter: looking for it at each place would cost half of a fit. */
const lowlandBestG = 8;

/** Starts, month by month, that give a good crop; one just above the size of a small one counts in part. */
function goodCrops(spots: readonly Spot[], types: readonly OnionType[], values: PlantValues): number {
  const newYear = dayNumber(nominalYear, 1, 1);
  let crops = 0;
  for (const [latitudeDeg, longitudeDeg] of spots) {
    const site = scoreSite({ latitudeDeg, longitudeDeg, elevationM: null }, values);
    for (const type of types) {
      for (const start of ['raised-seedlings', 'direct-seed'] as const) {
        const plan = { ...planDefaults, type, start, startDay: newYear };
        const runner = runnerOf(site, plan);
        for (let month = 1; month <= 12; month++) {
          runner.moveTo(dayNumber(nominalYear, month, 1), null);
          const outcome = runner.meanSeason();
          if (judge(outcome, values.types[type].dryMatterShare, lowlandBestG) === 'good')
            crops += Math.min(1, (outcome.bulbDryG / lowlandBestG - limits.smallShare) / 0.2);
        }
      }
    }
  }
  return crops;
}
