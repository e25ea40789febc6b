import { coverUse } from '../plant/index.ts';
import type { Outcome } from './outcome.ts';
import type { PlantState } from './plant-state.ts';
import { bulbing, canopyOf, cold, gain, leaves, ripening, water, winter } from './steps/index.ts';
import type { Terms } from './terms.ts';

/**
 * One day of a plant in its bed, in named steps: what the flat loop of `grow` must come to, bit for bit.
 * `out` is told of the start of bulbs.
 *
 * @param day days from the start of the plan
 * @returns false once the season is over: the stand lost, the tops down or the bulb turned back
 */
export function growDay(plant: PlantState, terms: Terms, day: number, out: Outcome): boolean {
  const { crop, open, at, photoAt } = terms;
  const i = at + day;
  const photoperiodH = terms.photoperiodH[photoAt + day];
  const isCovered =
    crop.covered && (day < terms.beddedOn + coverUse.days || open.tempMinC[i] < coverUse.frostBelowC);
  if (!winter(plant, terms, i, isCovered)) return false;
  const isRooted = plant.rootingTT <= 0;
  leaves(plant, terms, i, isCovered, isRooted);
  const canopy = canopyOf(plant, terms);
  const stress = water(plant, terms, i, canopy.intercepted);
  if (isRooted) gain(plant, terms, i, isCovered, canopy, stress);
  if (plant.hasBulb) {
    ripening(plant, terms, photoperiodH, i, isCovered);
    return !plant.reverted && plant.ripening < 1;
  }
  cold(plant, terms, day, i, isCovered);
  bulbing(plant, terms, photoperiodH, i, isCovered, isRooted, canopy.leafAreaIndex);
  if (plant.hasBulb) {
    out.onsetOn = day;
    out.leavesMade = plant.leaves;
    out.leavesGreen = plant.green;
    out.shootG = plant.shootG;
    out.photoperiodH = photoperiodH;
  }
  return true;
}
