export { hoursFromHome } from './at-home.ts';
export {
  boltedShare,
  boltingSizeFactor,
  coldResponse,
  setColdDays,
  setHalfMm,
  warmthUndoes,
} from './bolting.ts';
export { bulbDiameterMm, bulbMassG, marketableMinMm, plantSpreadCv } from './bulb.ts';
export { ageNeed, canopyHaste, photoperiodFactor, shadePenaltyH } from './bulbing.ts';
export { type Cover, covers, coverUse } from './cover.ts';
export { coldColumn, degreesColumn, rampColumn } from './day-columns.ts';
export { fieldFactor, normalSeedlingShare } from './emergence.ts';
export {
  crowdedPace,
  glazingShare,
  growthTemperatureFactor,
  interceptedShare,
  lampMJPerHour,
  nurseryPerM2,
  seedlingG,
  usedLightMJ,
  wetSpellFactor,
  youngLeafArea,
} from './growth.ts';
export {
  classOfType,
  type DayLengthClass,
  dayLengthClasses,
  type OnionType,
  onionTypes,
  type StartMethod,
  startMethods,
  type Verdict,
  verdicts,
} from './kinds.ts';
export { areaUpTo, leafAreaTotals, leafLimit, mostGreenLeaves } from './leaves.ts';
export { valuesAt } from './local-need.ts';
export {
  defaultPlantValues,
  type GrowthValues,
  growthParameters,
  type Parameter,
  type PlantValues,
  type TypeValues,
  typeParameters,
} from './parameters.ts';
export {
  bulbShare,
  finalTransferShare,
  greenShare,
  lastLeavesRate,
  lastLeavesRipening,
  reversal,
  ripeningDensityFactor,
  ripeningPhotoperiodFactor,
} from './ripening.ts';
export { type StartWay, startWays } from './start-ways.ts';
export { degreesAbove, ramp } from './thermal.ts';
export { daysToTopsOver, topsBetweenPlantsDays, topsOverShare } from './tops-over.ts';
export { type CultivarTraits, plantValuesOf } from './traits.ts';
export {
  coverShelterC,
  hardening,
  heavedShare,
  killingTempC,
  nextSnowMm,
  nightKillShare,
  noHarmAboveC,
  snowShelterC,
} from './winter.ts';
