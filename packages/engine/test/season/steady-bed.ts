import { defaultPlantValues, onionTypes, type PlantValues, type TypeValues } from '../../src/plant/index.ts';
import { type Crop, cropOf } from '../../src/season/crop.ts';
import type { Drivers } from '../../src/season/drivers.ts';
import { type PlanForm, planDefaults } from '../../src/season/plan.ts';
import { emptyPlant, type PlantState } from '../../src/season/plant-state.ts';
import { type Terms, termsOf } from '../../src/season/terms.ts';

/** Round numbers to reckon with by hand, which no fit moves. */
export const roundGrowth = {
  ...defaultPlantValues.growth,
  emergenceBaseC: 2,
  emergenceCapC: 25,
  emergenceTT: 100,
  leafBaseC: 5,
  leafCapC: 20,
  phyllochron: 100,
  firstLeavesFactor: 1.5,
  leafLifeTT: 900,
  leafAreaMaxCm2: 100,
  leafSizeScale: 4,
  shootPerLeafArea: 0.01,
  growthBaseC: 6,
  growthRate: 0.01,
  radiationUseGMJ: 1,
  lightHalfMJ: 12,
  extinction: 0.5,
  competenceTT: 500,
  nurseryCrowdLeaves: 4,
  photoperiodRampH: 0.5,
  bulbingRate: 0.3,
  bulbingBaseC: 5,
  bulbingFullC: 20,
  bulbingLossPerDay: 0.05,
  ripeningDensitySlope: 0.1,
  transplantLeaves: 4,
  transplantG: 0.5,
  rootingTT: 200,
  frostHeaveLoss: 0.1,
  setSproutTT: 60,
  setLeaves: 2,
  setG: 0.8,
  setLeafSizeScale: 3,
  setSizePower: 1,
  setRipeningFactor: 0.9,
  boltingSizeSpan: 1,
};

export const roundType: TypeValues = {
  criticalPhotoperiodH: 14,
  photoperiodPerH: 0,
  minimumLeaves: 5,
  competenceShare: 1,
  ripeningTT: 800,
  ripeningPhotoperiodSlope: 0.2,
  ripeningBaseC: 0,
  ripeningCapC: 21,
  vernalHalfD: 40,
  vernalSpreadD: 5,
  boltingSizeG: 1,
  vernalCeilingC: 17,
  dryMatterShare: 0.1,
};

const roundValues: PlantValues = {
  growth: roundGrowth,
  types: Object.fromEntries(onionTypes.map((type) => [type, roundType])) as PlantValues['types'],
};

/** A dull dry day at 15 °C, the same from edge to edge. */
const day = {
  tempMeanC: 15,
  tempMinC: 15,
  rainMm: 0,
  wetness: 0.3,
  leafTT: 10,
  lifeTT: 12,
  growthTT: 9,
  soilTT: 13,
  soilMeanC: 15,
  usedLight: 15,
  growthLight: 15,
  bulbingTemp: 1,
  ripeningTT: 16,
  cold: 0,
  referenceEt: 5,
};
export type SteadyDay = typeof day;

/** Weather that is the same every day. */
export function steadyAir(other: Partial<SteadyDay> = {}, days = 800): Drivers {
  const all = { ...day, ...other };
  const column = (name: keyof SteadyDay) => new Float64Array(days).fill(all[name]);
  const [bulbingTemp, ripeningTT, cold, referenceEt] = [
    column('bulbingTemp'),
    column('ripeningTT'),
    column('cold'),
    column('referenceEt'),
  ];
  return {
    days,
    tempMeanC: column('tempMeanC'),
    tempMinC: column('tempMinC'),
    rainMm: column('rainMm'),
    wetness: column('wetness'),
    leafTT: column('leafTT'),
    lifeTT: column('lifeTT'),
    growthTT: column('growthTT'),
    soilTT: column('soilTT'),
    soilMeanC: column('soilMeanC'),
    usedLight: column('usedLight'),
    growthLight: column('growthLight'),
    bulbingTemp: () => bulbingTemp,
    ripeningTT: () => ripeningTT,
    cold: () => cold,
    referenceEt: () => referenceEt,
  };
}

export const steadyPlan: PlanForm = {
  ...planDefaults,
  type: 'northern-long',
  start: 'direct-seed',
  startDay: 0,
};

/** A crop of round numbers, in full sun, whose season lasts 300 days. */
export function steadyCrop(plan: Partial<PlanForm> = {}, other: Partial<Crop> = {}): Crop {
  return { ...cropOf({ ...steadyPlan, ...plan }, roundValues, 16), lastDay: 300, ...other };
}

/** The terms of a season in steady weather. */
export function steadyTerms(
  of: {
    crop?: Crop;
    open?: Partial<SteadyDay> | undefined;
    covered?: Partial<SteadyDay>;
    photoperiodH?: number;
    beddedOn?: number;
  } = {},
): Terms {
  const { crop = steadyCrop(), open = {}, covered = open, photoperiodH = 16, beddedOn = 0 } = of;
  const days = new Float64Array(800).fill(photoperiodH);
  return termsOf(crop, steadyAir(open), steadyAir(covered), 0, days, 0, beddedOn);
}

/** A grown plant with five leaves, rooted and old enough to bulb, with what a test changes of it. */
export function plantOf(other: Partial<PlantState> = {}): PlantState {
  return { ...emptyPlant(), leaves: 5, green: 5, age: 600, shootG: 2, recentC: 15, ...other };
}
