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
export { onionCropCoefficient, onionReadilyShare, onionRootDepthM } from './onion-water.ts';
export { availableMmPerM, type Soil, type SoilTexture, soils, soilTextures } from './soil-texture.ts';
export {
  adjustedDepletionShare,
  effectiveRainMm,
  nextDepletion,
  totalAvailableMm,
  waterStress,
} from './soil-water.ts';
