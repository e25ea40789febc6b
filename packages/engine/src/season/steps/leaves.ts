import { lastLeavesRate, lastLeavesRipening, leafLimit, mostGreenLeaves } from '../../plant/index.ts';
import type { PlantState } from '../plant-state.ts';
import type { Terms } from '../terms.ts';

const mostLeaves = leafLimit - 1;

/** New leaves and age of a rooted plant, rooting of one that was moved, and the old leaves that die. */
export function leaves(
  plant: PlantState,
  terms: Terms,
  i: number,
  isCovered: boolean,
  isRooted: boolean,
): void {
  const { growth } = terms.crop;
  const air = isCovered ? terms.covered : terms.open;
  plant.lifeTT += air.lifeTT[i];
  if (isRooted) {
    if (plant.ripening < lastLeavesRipening && plant.leaves < mostLeaves) {
      const pace = (plant.leaves < 3 ? growth.firstLeavesFactor : 1) * terms.phyllochron;
      const before = Math.floor(plant.leaves);
      plant.leaves += (air.leafTT[i] / pace) * (plant.hasBulb ? lastLeavesRate : 1);
      if (plant.leaves > mostLeaves) plant.leaves = mostLeaves;
      for (let leaf = before + 1; leaf <= plant.leaves; leaf++) plant.leafBorn[leaf] = plant.lifeTT;
    }
    plant.age += air.leafTT[i];
  } else plant.rootingTT -= air.leafTT[i];
  const made = Math.floor(plant.leaves);
  while (plant.dead < made && plant.lifeTT - plant.leafBorn[plant.dead + 1] > growth.leafLifeTT) plant.dead++;
  plant.green = Math.min(plant.leaves - plant.dead, mostGreenLeaves);
}
