export {
  atmosphericPressure,
  meanSaturationVapourPressure,
  psychrometricConstant,
  saturationSlope,
  saturationVapourPressure,
  vapourPressureFromHumidityRange,
  windAt2m,
} from './air.ts';
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
export { onionCropCoefficient, onionReadilyShare, onionRootDepthM } from './onion-water.ts';
export { availableMmPerM, type Soil, type SoilTexture, soils, soilTextures } from './soil-texture.ts';
export {
  adjustedDepletionShare,
  effectiveRainMm,
  nextDepletion,
  totalAvailableMm,
  waterStress,
} from './soil-water.ts';
export {
  type FullBed,
  fillBed,
  plantsPerM2,
  type Spacing,
  type Stand,
  standOf,
  usualSpacing,
} from './spacing.ts';
