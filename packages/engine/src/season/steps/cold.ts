import { boltingSizeFactor, warmthUndoes } from '../../plant/index.ts';
import { idleColdDays, type PlantState } from '../plant-state.ts';
import type { Terms } from '../terms.ts';

/**
 * Cold that comes later than this before a crop's last day shows no stalk in it: about ten weeks go by (Holdsworth &
 * Heath IV), more in the cool of autumn (memory).
 */
export const stalkDays = 120;

/** Cold that turns a plant without a bulb towards flowering, and warmth that undoes it. */
export function cold(plant: PlantState, terms: Terms, day: number, i: number, isCovered: boolean): void {
  const { growth, type, lastDay } = terms.crop;
  const chill = (isCovered ? terms.coldCovered : terms.coldOpen)[i];
  const slot = day % idleColdDays;
  plant.recentCold[slot] = 0;
  if (chill > 0 && plant.shootG > type.boltingSizeG && day < lastDay - stalkDays) {
    plant.recentCold[slot] =
      plant.coldPace * chill * boltingSizeFactor(plant.shootG, type.boltingSizeG, growth.boltingSizeSpan);
    plant.coldDays += plant.recentCold[slot];
  }
  const meanC = (isCovered ? terms.covered : terms.open).tempMeanC[i];
  if (meanC > warmthUndoes.aboveC && plant.coldDays > plant.storeColdDays)
    plant.coldDays = Math.max(plant.storeColdDays, plant.coldDays - warmthUndoes.days);
}

/** Young bulbs hold stalks back: the cold of the last weeks counts for nothing. */
export function forgetRecentCold(plant: PlantState): void {
  for (const cold of plant.recentCold) plant.coldDays -= cold;
  if (plant.coldDays < plant.storeColdDays) plant.coldDays = plant.storeColdDays;
}
