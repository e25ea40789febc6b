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
export { type LimeAdvice, limeAdvice } from './feed-lime.ts';
export {
  type BedNitrogen,
  bedNitrogen,
  isCoarse,
  nitrogenRemovedGPerKg,
  nitrogenSuppliedGPerKg,
  nitrogenTakenShare,
  nitrogenToGive,
} from './feed-need.ts';
export {
  drawnNitrogenG,
  type FeedProduct,
  isOrganic,
  organicFeeds,
  productG,
  readFeedProduct,
} from './feed-product.ts';
export { type FeedChance, type FeedShare, feedLeaves, splitFeeds } from './feed-split.ts';
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
export {
  type FullBed,
  fillBed,
  plantsPerM2,
  type Spacing,
  type Stand,
  standOf,
  usualSpacing,
} from './spacing.ts';
export { efficiencyOf, usualWatering, wettedShare } from './watering.ts';
