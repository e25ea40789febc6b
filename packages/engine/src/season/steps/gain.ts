import { bulbShare, wetSpellFactor } from '../../plant/index.ts';
import type { PlantState } from '../plant-state.ts';
import type { Terms } from '../terms.ts';
import type { Canopy } from './canopy.ts';

/** New dry matter of a rooted plant, by light or by age, whichever gives less, shared between shoot and bulb. */
export function gain(
  plant: PlantState,
  { crop, open, covered, growthFactor }: Terms,
  i: number,
  isCovered: boolean,
  { standingCm2, intercepted }: Canopy,
  stress: number,
): void {
  const { growth } = crop;
  const air = isCovered ? covered : open;
  const disease = wetSpellFactor(air.wetness[i], air.tempMeanC[i]);
  const byLight =
    (growth.radiationUseGMJ * air.growthLight[i] * crop.lightShare * intercepted) / crop.standPerM2;
  const byAge = (plant.shootG + plant.bulbG) * growth.growthRate * air.growthTT[i];
  const made = Math.min(byAge, byLight) * stress * disease * growthFactor;
  if (plant.hasBulb) {
    const toBulb = bulbShare(plant.ripening) * made;
    plant.bulbG += toBulb;
    plant.shootG += made - toBulb;
  } else {
    // what the standing leaves cannot hold is not made, and what is there does not go
    const most = Math.max(standingCm2 * growth.shootPerLeafArea, crop.youngG);
    plant.shootG = Math.max(plant.shootG, Math.min(plant.shootG + made, most));
  }
}
