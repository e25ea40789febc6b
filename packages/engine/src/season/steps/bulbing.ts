import { ageNeed, canopyHaste, photoperiodFactor } from '../../plant/index.ts';
import type { PlantState } from '../plant-state.ts';
import type { Terms } from '../terms.ts';
import { forgetRecentCold } from './cold.ts';

/**
 * Long days turn a plant of some age and leaves to a bulb; marginal day lengths induce less than is lost, so they never
 * add up to one. A plant that is still rooting after its move neither grows nor bulbs, but keeps what long days have done.
 */
export function bulbing(
  plant: PlantState,
  terms: Terms,
  photoperiodH: number,
  i: number,
  isCovered: boolean,
  isRooted: boolean,
  leafAreaIndex: number,
): void {
  const { growth, type } = terms.crop;
  const { criticalH } = terms;
  if (isRooted || photoperiodH < criticalH) {
    const isOfAge = plant.age >= terms.competenceTT * ageNeed(photoperiodH - criticalH);
    if (photoperiodH > criticalH && isOfAge && plant.leaves >= type.minimumLeaves)
      plant.bulbing +=
        growth.bulbingRate *
        photoperiodFactor(photoperiodH, criticalH, growth.photoperiodRampH) *
        (isCovered ? terms.warmthCovered : terms.warmthOpen)[i] *
        canopyHaste(leafAreaIndex);
    plant.bulbing = plant.bulbing > growth.bulbingLossPerDay ? plant.bulbing - growth.bulbingLossPerDay : 0;
  }
  if (plant.bulbing >= 1) {
    plant.hasBulb = true;
    plant.bulbing = 1;
    forgetRecentCold(plant);
  }
}
