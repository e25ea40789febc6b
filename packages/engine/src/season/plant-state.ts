import { leafLimit, seedlingG } from '../plant/index.ts';
import { holdFractions } from './fractions.ts';

/** Cold of the last weeks before bulbs start turns no plant: young bulbs hold stalks back (Holdsworth & Heath IV; length memory). */
export const idleColdDays = 28;

/** The median plant of a stand on one day. Masses are dry matter, g a plant; shares are 0…1. */
export type PlantState = {
  /** Leaves made, a part of the next one counted too. */
  leaves: number;
  /** Leaves standing green. */
  green: number;
  /** Oldest leaves that have died. */
  dead: number;
  /** Thermal age at which each leaf appeared, °C d above 3 °C, by its number. */
  leafBorn: Float64Array;
  /** Thermal time of leaf life so far, °C d above 3 °C. */
  lifeTT: number;
  /** Thermal age, °C d above 5 °C. */
  age: number;
  /** Thermal time until a moved plant has rooted, °C d above 5 °C; none left: it grows. */
  rootingTT: number;
  shootG: number;
  bulbG: number;
  /** Way to the start of bulbs, 1 at onset. */
  bulbing: number;
  hasBulb: boolean;
  /** Way from onset to neck fall, 1 there. */
  ripening: number;
  /** Days more, of those since onset, that turn a bulb back to leaves than that do not. */
  turnBack: number;
  reverted: boolean;
  /** Cold towards flowering, days at 9 °C. */
  coldDays: number;
  /** The part of it that warmth in the bed cannot undo, brought by sets from their store. */
  storeColdDays: number;
  /** Share at which cold in the bed counts. */
  coldPace: number;
  /** Cold met on each of the last days, round and round. */
  recentCold: Float64Array;
  /** Running mean of the air, °C, by which plants harden. */
  recentC: number;
  aliveShare: number;
  liftedShare: number;
  /** Snow that lies, mm of water. */
  snowMm: number;
  /** Water short of a full bed, mm. */
  depletionMm: number;
  thirstyDays: number;
};

export function emptyPlant(): PlantState {
  const plant: PlantState = {
    leaves: 0,
    green: 0,
    dead: 0,
    leafBorn: new Float64Array(leafLimit + 2),
    lifeTT: 0,
    age: 0,
    rootingTT: 0,
    shootG: seedlingG,
    bulbG: 0,
    bulbing: 0,
    hasBulb: false,
    ripening: 0,
    turnBack: 0,
    reverted: false,
    coldDays: 0,
    storeColdDays: 0,
    coldPace: 1,
    recentCold: new Float64Array(idleColdDays),
    recentC: 0,
    aliveShare: 1,
    liftedShare: 0,
    snowMm: 0,
    depletionMm: 0,
    thirstyDays: 0,
  };
  holdFractions(plant);
  return plant;
}

const seed = emptyPlant();

/** Makes a plant what a seed gives, in place. */
export function beginPlant(plant: PlantState): void {
  copyPlant(seed, plant);
}

/** Makes `to` the same plant as `from`, in place and with its own lists. */
export function copyPlant(from: PlantState, to: PlantState): void {
  const { leafBorn, recentCold } = to;
  leafBorn.set(from.leafBorn);
  recentCold.set(from.recentCold);
  Object.assign(to, from, { leafBorn, recentCold });
}
