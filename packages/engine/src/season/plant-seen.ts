import { areaUpTo, leafLimit } from '../plant/index.ts';
import type { Crop } from './crop.ts';
import { copyPlant, emptyPlant, type PlantState } from './plant-state.ts';

/**
 * The plant that the model has on a day, made to stand as it was seen: with so many green leaves. Leaves that have died
 * stay dead, a leaf more counts as born today, and the shoot is lighter or heavier as its leaves are smaller or larger in
 * all; what long days and cold have done to it stays.
 *
 * @param greenLeaves leaves standing green, 0 or more
 */
export function plantSeen(crop: Crop, modelled: PlantState, greenLeaves: number): PlantState {
  const plant = emptyPlant();
  copyPlant(modelled, plant);
  plant.leaves = Math.min(leafLimit - 1, plant.dead + Math.max(0, greenLeaves));
  plant.green = plant.leaves - plant.dead;
  for (let leaf = Math.floor(modelled.leaves) + 1; leaf <= plant.leaves; leaf++)
    plant.leafBorn[leaf] = plant.lifeTT;
  const area = (of: PlantState) =>
    areaUpTo(crop.areaTotals, of.leaves) - areaUpTo(crop.areaTotals, of.leaves - of.green);
  const before = area(modelled);
  if (before > 0) plant.shootG *= area(plant) / before;
  return plant;
}
