export { blendedClimate, climateAt } from './climate-at.ts';
export {
  type ClimateField,
  type ClimateNodes,
  climateFields,
  type FieldColumns,
  fieldForms,
  lapseCPerM,
} from './climate-nodes.ts';
export { type DailyCurveOptions, dailyCurve } from './daily-curve.ts';
export {
  type ClimateFileHead,
  climateFileHeadStart,
  climateFileMagic,
  climateFileVersion,
  decodeClimateNodes,
} from './decode-nodes.ts';
export { frostHollowC, inFrostHollow } from './frost-hollow.ts';
export { minTempSd } from './min-temp-sd.ts';
export {
  type ClimatePoint,
  coverageKm,
  elevationSpreadKm,
  elevationSpreadWarningM,
  type FittedClimate,
  type MonthlyClimate,
} from './monthly-climate.ts';
export {
  krigingWeights,
  lookupSettings,
  nearestSites,
  type SiteWeights,
  siteWeights,
  type WeightSettings,
} from './site-weights.ts';
export { earthRadiusKm, groundKm, type Position, positionAt, type Sites, sitesAt } from './sites.ts';
export { landWarmingSinceNormalsC, warmed } from './warmed.ts';
