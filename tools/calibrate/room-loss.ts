import {
  dayNumber,
  judge,
  limits,
  type OnionType,
  type PlantValues,
  planDefaults,
  runnerOf,
} from '../../packages/engine/src/index.ts';
import { nominalYear } from '../score/calendar-rows.ts';
import { growthRoom } from '../score/growth-rooms.ts';
import { below15, below25, type Spot } from '../score/hard-tests.ts';
import { scoreSite } from '../score/sites.ts';

// All prices here are choices of ours.

/** Prices for what growth rooms and common practice rule out, in days or so. */
export function roomLoss(values: PlantValues): number {
  return roomPrice(values) + tropicsPrice(values);
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
    0.5 * Math.max(0, (twelve.ripeDays ?? 90) - 42) +
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
          if (judge(outcome, plan, values.types[type].dryMatterShare, lowlandBestG) === 'good')
            crops += Math.min(1, (outcome.bulbDryG / lowlandBestG - limits.smallShare) / 0.2);
        }
      }
    }
  }
  return crops;
}
