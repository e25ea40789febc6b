export {
  atmosphericPressure,
  lowestHumidityPct,
  meanSaturationVapourPressure,
  psychrometricConstant,
  saturationSlope,
  saturationVapourPressure,
  vapourPressureFromHumidityRange,
  windAt2m,
} from './air.ts';
export {
  basalInClimate,
  type CropCurve,
  climateTerm,
  coefficientOnDay,
  heightFactor,
  largestCoefficient,
} from './crop-coefficient.ts';
export {
  dailyReferenceEt,
  hargreavesEt,
  mmPerMJ,
  monthlySoilHeat,
  netLongwave,
  netShortwave,
  penmanMonteith,
} from './evapotranspiration.ts';
export { type Fertility, fertilities, type WateringWay, wateringWays } from './ground.ts';
export { monthlyReferenceEt } from './monthly-reference-et.ts';
export { onionBasalCurve, onionSingleCurve } from './onion-stages.ts';
export {
  onionBasalCoefficient,
  onionCropCoefficient,
  onionHeightM,
  onionReadilyShare,
  onionRootDepthM,
} from './onion-water.ts';
export {
  leachingShare,
  onionSaltTolerance,
  type SaltTolerance,
  saltStress,
  saltYieldShare,
  soilSaltDsPerM,
} from './salt.ts';
export { evaporationCoefficient, evaporationReduction, exposedShare } from './soil-evaporation.ts';
export {
  availableMmPerM,
  evaporableMm,
  type Soil,
  type SoilTexture,
  soils,
  soilTextures,
} from './soil-texture.ts';
export {
  adjustedDepletionShare,
  effectiveRainMm,
  nextDepletion,
  totalAvailableMm,
  waterStress,
} from './soil-water.ts';
export { efficiencyOf, usualWatering, wettedShare } from './watering.ts';
