import { reversal, ripeningPhotoperiodFactor } from '../../plant/index.ts';
import type { PlantState } from '../plant-state.ts';
import type { Terms } from '../terms.ts';

/** A bulb ripens by warmth and long days; while young, short days or cold turn it back to leaves. */
export function ripening(
  plant: PlantState,
  terms: Terms,
  photoperiodH: number,
  i: number,
  isCovered: boolean,
): void {
  const { crop, criticalH } = terms;
  plant.ripening +=
    ((isCovered ? terms.ripenCovered : terms.ripenOpen)[i] / terms.ripeningTT) *
    ripeningPhotoperiodFactor(photoperiodH, criticalH, crop.type.ripeningPhotoperiodSlope) *
    crop.densityHaste;
  if (plant.ripening >= reversal.beforeRipening) return;
  const meanC = (isCovered ? terms.covered : terms.open).tempMeanC[i];
  const isBack = photoperiodH < criticalH - reversal.shortfallH || meanC < reversal.coldC;
  plant.turnBack = isBack ? plant.turnBack + 1 : Math.max(0, plant.turnBack - 1);
  plant.reverted = plant.turnBack > reversal.days;
}
