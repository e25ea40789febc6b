export type { DryingDays } from './drying.ts';
export { type Eaten, type EatReason, eatFirst, eatReasons } from './eat-first.ts';
export type { Household } from './household.ts';
export type { GapCloser, KeepGap, KeepLot, KeepMonth, KeepYear, StartNeed } from './keep-year.ts';
export {
  type KeepingCurve,
  keepingCurve,
  keptDays,
  lastsDay,
  type StoredLot,
} from './keeping.ts';
export { learnStore, type StoreCheck } from './learn-store.ts';
export type { LiftAdvice } from './lift-advice.ts';
export {
  type StoreAir,
  type StoreClimate,
  type StoreSaid,
  storeClimateOf,
} from './store-climate.ts';
export { noStoreDraw, type StoreDraw, storeDrawsOf } from './store-draw.ts';
export { type StoredNow, type StoredPlanting, storedNow } from './stored-now.ts';
