export {
  type DryingDays,
  type DryingPlace,
  dryingDays,
  dryingOf,
  dryingPlaces,
  type LiftedWeather,
  longestDrying,
} from './drying.ts';
export type { Household } from './household.ts';
export type { GapCloser, KeepGap, KeepLot, KeepMonth, KeepYear, StartNeed } from './keep-year.ts';
export { type KeepingCurve, keepingCurve, keptDays, type StoredLot } from './keeping.ts';
export { type LiftAdvice, type LiftVerdict, liftAdvice, rainAheadDays } from './lift-advice.ts';
export { wetSpellMm } from './lift-verdict.ts';
export {
  type StoreAir,
  type StoreClimate,
  type StoreSaid,
  storeClimateOf,
} from './store-climate.ts';
export { noStoreDraw, type StoreDraw, storeDrawsOf } from './store-draw.ts';
export type { StoredNow } from './stored-now.ts';
