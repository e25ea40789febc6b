import { availableMmPerM, onionReadilyShare } from '../bed/index.ts';
import type { SeasonDay } from '../calendar/index.ts';
import {
  coverShelterC,
  type GrowthValues,
  leafAreaTotals,
  leafLimit,
  mostGreenLeaves,
  type PlantValues,
  plantValuesOf,
  ripeningDensityFactor,
  shadePenaltyH,
  startWays,
  type TypeValues,
  youngLeafArea,
} from '../plant/index.ts';
import { type Draw, noDraw } from './draws.ts';
import { holdFractions } from './fractions.ts';
import type { Plan } from './plan.ts';

/** Sets of this size are what growers plant; larger than the other, they make no larger plants (Sapporo 1949–50), mm. */
const usualSetMm = 16;
const largestSetMm = 21;

/** A plan turned into the numbers the daily loop reads. */
export type Crop = {
  growth: GrowthValues;
  type: TypeValues;
  draw: Draw;
  areaTotals: Float64Array;
  /** Shoot dry matter from which cold counts in full, a hair above the model's own, g. */
  fullColdG: number;
  /** Shoot dry matter above which leaf area follows the leaves alone, g. */
  youngG: number;
  standPerM2: number;
  densityHaste: number;
  ripeningFactor: number;
  /** Thermal time after the move in which plants root and do nothing else, °C d. */
  rootingTT: number;
  lightShare: number;
  shadePenaltyH: number;
  covered: boolean;
  coverShelterC: number;
  watered: boolean;
  /** False where nobody asks for the water of a watered bed. */
  followsWater: boolean;
  availableMmPerM: number;
  readilyShare: number;
  /** Days from the start after which the season is over whatever the state. */
  lastDay: SeasonDay;
};

/** Light left in full shade by the open sky, as a share of a sunny bed's (memory: diffuse share of a half-cloudy climate). */
const skyLightShare = 0.3;

/** @param longestDayH longest sun-up day of the place, h */
export function cropOf(plan: Plan, values: PlantValues, longestDayH: number): Crop {
  const { growth } = values;
  const sunny = plan.sunHours === null ? 1 : Math.min(1, plan.sunHours / longestDayH);
  const lightShare = skyLightShare + (1 - skyLightShare) * sunny;
  const areaTotals =
    plan.start === 'sets'
      ? leafAreaTotals(
          growth.leafAreaMaxCm2 *
            (Math.min(plan.setSizeMm, largestSetMm) / usualSetMm) ** growth.setSizePower,
          growth.setLeafSizeScale,
        )
      : leafAreaTotals(growth.leafAreaMaxCm2, growth.leafSizeScale);
  const type = plantValuesOf(values, plan);
  for (const values of [growth, type]) holdFractions(values);
  const crop = {
    growth,
    type,
    draw: noDraw,
    areaTotals,
    fullColdG: type.boltingSizeG * Math.exp(growth.boltingSizeSpan) * (1 + 1e-9),
    youngG: shootCarrying(areaTotals[leafLimit] - areaTotals[leafLimit - mostGreenLeaves]),
    standPerM2: plan.densityPerM2,
    densityHaste: ripeningDensityFactor(plan.densityPerM2, growth.ripeningDensitySlope),
    ripeningFactor: plan.start === 'sets' ? growth.setRipeningFactor : 1,
    rootingTT: startWays[plan.start].rootsAnew ? growth.rootingTT : 0,
    lightShare,
    shadePenaltyH: shadePenaltyH(1 - lightShare),
    covered: plan.cover !== 'none',
    coverShelterC: coverShelterC[plan.cover],
    watered: plan.water === 'watered',
    followsWater: true,
    availableMmPerM: availableMmPerM(plan.soil),
    readilyShare: onionReadilyShare(plan.soil),
  };
  holdFractions(crop);
  return { ...crop, lastDay: 0 };
}

/** Shoot dry matter, g, whose young-plant leaf area is `areaCm2`; the area grows steadily, so halving finds it. */
function shootCarrying(areaCm2: number): number {
  let low = 0;
  let high = 100;
  for (let i = 0; i < 40; i++) {
    const middle = (low + high) / 2;
    if (youngLeafArea(middle) < areaCm2) low = middle;
    else high = middle;
  }
  return high;
}
