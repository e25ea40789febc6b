export type { DryingDays } from './drying.ts';
export type { Household } from './household.ts';
export type {
  GapCloser,
  KeepGap,
  KeepLot,
  KeepMonth,
  KeepYear,
  KitchenKind,
  StartNeed,
} from './keep-year.ts';
export { type KeepProgress, keepYearOf, keepYearSteps } from './keep-year-of.ts';
export { type KeepingCurve, keepingCurve, keptDays, type StoredLot } from './keeping.ts';
export type { LiftAdvice } from './lift-advice.ts';
export { afterHalfOver, liftedOf, longestUnripe, unripeKeepsMonths, usualBruised } from './lifting.ts';
export {
  type StoreAir,
  type StoreClimate,
  type StoreSaid,
  storeClimateOf,
} from './store-climate.ts';
export { noStoreDraw, type StoreDraw, storeDrawsOf } from './store-draw.ts';
export type { StoredNow } from './stored-now.ts';
