import type { SeasonDay } from '../calendar/index.ts';
import { holdFractions } from './fractions.ts';

/** How far a season went. */
export const stage = { started: 0, emerged: 1, planted: 2, onset: 3, fallen: 4 } as const;
/** One season of the median plant, filled in place so that a run allocates nothing. */
export type Outcome = {
  reached: number;
  emergedOn: SeasonDay;
  plantedOn: SeasonDay;
  /** Leaves made on the day of planting. */
  leavesPlanted: number;
  onsetOn: SeasonDay;
  fellOn: SeasonDay;
  /** Onset came but ripening was turned back or did not end. */
  reverted: boolean;
  leavesMade: number;
  leavesGreen: number;
  shootG: number;
  photoperiodH: number;
  /** Bulb dry matter at the end, g. */
  bulbDryG: number;
  coldDays: number;
  boltedShare: number;
  aliveShare: number;
  /** Share of the plants that frost lifted out of wet ground. */
  liftedShare: number;
  emergedShare: number;
  /** Rain-fed: days short of water; watered: days on which the bed needed water. */
  thirstyDays: number;
};

export function emptyOutcome(): Outcome {
  const outcome: Outcome = {
    reached: 0,
    emergedOn: 0,
    plantedOn: 0,
    leavesPlanted: 0,
    onsetOn: 0,
    fellOn: 0,
    reverted: false,
    leavesMade: 0,
    leavesGreen: 0,
    shootG: 0,
    photoperiodH: 0,
    bulbDryG: 0,
    coldDays: 0,
    boltedShare: 0,
    aliveShare: 1,
    liftedShare: 0,
    emergedShare: 1,
    thirstyDays: 0,
  };
  holdFractions(outcome);
  return outcome;
}
