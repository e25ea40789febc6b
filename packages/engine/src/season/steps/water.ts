import {
  adjustedDepletionShare,
  effectiveRainMm,
  nextDepletion,
  onionCropCoefficient,
  onionRootDepthM,
  waterStress,
} from '../../bed/index.ts';
import type { PlantState } from '../plant-state.ts';
import type { Terms } from '../terms.ts';

/**
 * What the bed would lack on rain alone; a watered bed is refilled before it does harm.
 * Gives the share of growth that thirst leaves, 0…1.
 */
export function water(
  plant: PlantState,
  { crop, open, referenceEt }: Terms,
  i: number,
  intercepted: number,
): number {
  if (!crop.followsWater) return 1;
  const et = referenceEt[i];
  const cropEt = et * onionCropCoefficient(intercepted, plant.ripening);
  const available = crop.availableMmPerM * onionRootDepthM(plant.leaves);
  let stress = waterStress(plant.depletionMm, available, adjustedDepletionShare(crop.readilyShare, cropEt));
  if (stress < 1) {
    plant.thirstyDays++;
    if (crop.watered) {
      plant.depletionMm = 0;
      stress = 1;
    }
  }
  plant.depletionMm = nextDepletion(
    plant.depletionMm,
    effectiveRainMm(open.rainMm[i], et),
    cropEt * stress,
    available,
  );
  return stress;
}
