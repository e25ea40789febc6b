import {
  hardening,
  heavedShare,
  killingTempC,
  nextSnowMm,
  nightKillShare,
  noHarmAboveC,
  snowShelterC,
} from '../../plant/index.ts';
import type { PlantState } from '../plant-state.ts';
import type { Terms } from '../terms.ts';

/** Smallest share of plants worth growing on. */
export const standLost = 0.02;
/** Days over which hardening looks back. */
export const hardeningDays = 14;

/** Frost, snow and what they take of the stand; false once it is lost. */
export function winter(plant: PlantState, terms: Terms, i: number, isCovered: boolean): boolean {
  const { crop, open, covered } = terms;
  const outsideMinC = open.tempMinC[i];
  const meanC = (isCovered ? covered : open).tempMeanC[i];
  if (outsideMinC < 0 || plant.snowMm > 0) {
    // the growing point sits at the ground, half way between air and bed
    const crownC = (outsideMinC + open.soilMeanC[i]) / 2;
    const sheltered = crownC + (isCovered ? crop.coverShelterC : 0) + snowShelterC(plant.snowMm);
    if (sheltered < noHarmAboveC) {
      plant.aliveShare *= 1 - nightKillShare(sheltered, killingTempC(plant.leaves, hardening(plant.recentC)));
      if (plant.aliveShare < standLost) {
        plant.aliveShare = 0;
        return false;
      }
    }
    if (plant.snowMm === 0 && !isCovered) {
      const lost =
        plant.aliveShare *
        heavedShare(outsideMinC, meanC, open.wetness[i], plant.shootG, crop.growth.frostHeaveLoss);
      plant.aliveShare -= lost;
      plant.liftedShare += lost;
    }
    plant.snowMm = nextSnowMm(plant.snowMm, open.rainMm[i], open.tempMeanC[i]);
  }
  plant.recentC += (meanC - plant.recentC) / hardeningDays;
  return true;
}
