import { boltedShare, finalTransferShare } from '../plant/index.ts';
import { type Outcome, stage } from './outcome.ts';
import type { PlantState } from './plant-state.ts';
import type { Terms } from './terms.ts';

/** What a season came to, from the plant as its last day left it. @param day the day on which it was over */
export function endSeason(plant: PlantState, { crop: { type } }: Terms, day: number, out: Outcome): void {
  const isRipe = plant.ripening >= 1;
  out.reached = isRipe ? stage.fallen : plant.hasBulb ? stage.onset : stage.planted;
  if (isRipe) out.fellOn = day;
  out.reverted = plant.reverted;
  if (!plant.hasBulb) {
    out.leavesMade = plant.leaves;
    out.leavesGreen = plant.green;
    out.shootG = plant.shootG;
  }
  out.bulbDryG = plant.hasBulb
    ? plant.bulbG + finalTransferShare * plant.shootG * Math.min(1, plant.ripening)
    : 0;
  out.coldDays = plant.coldDays;
  out.boltedShare = boltedShare(plant.coldDays, type.vernalHalfD, type.vernalSpreadD);
  out.aliveShare = plant.aliveShare;
  out.liftedShare = plant.liftedShare;
  out.thirstyDays = plant.thirstyDays;
}
