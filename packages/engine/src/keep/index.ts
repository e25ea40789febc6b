export { broughtIn, isStoreLook } from './brought-in.ts';
export {
  type DryingDays,
  type DryingPlace,
  dryingDays,
  dryingOf,
  dryingPlaces,
  type LiftedWeather,
  longestDrying,
} from './drying.ts';
export { type Eaten, type EatReason, eatFirst, eatReasons } from './eat-first.ts';
export { greenSpacing } from './green-lot.ts';
export type { Household } from './household.ts';
export type {
  GapCloser,
  KeepGap,
  KeepLot,
  KeepMonth,
  KeepYear,
  KitchenKind,
  StartNeed,
  StoreTaught,
} from './keep-year.ts';
export { type KeepProgress, keepYearOf, keepYearSteps } from './keep-year-of.ts';
export {
  type KeepingCurve,
  keepingCurve,
  keptDays,
  lastsDay,
  type StoredLot,
} from './keeping.ts';
export { keptLotOf, type StoredPlanting } from './kept-lot.ts';
export { learnStore, type StoreCheck } from './learn-store.ts';
export { type LiftAdvice, type LiftVerdict, liftAdvice, rainAheadDays } from './lift-advice.ts';
export { wetSpellMm } from './lift-verdict.ts';
export {
  liftedOf,
  longestUnripe,
  unripeKeepsMonths,
  usualBruised,
  usualLifted,
} from './lifting.ts';
export { type StoreClimate, storeClimateOf } from './store-climate.ts';
export { noStoreDraw, type StoreDraw, storeDrawsOf } from './store-draw.ts';
export { storeLooks, takenInAfter } from './store-looks.ts';
export { ratesOf, type StoreRates } from './store-rates.ts';
export { type StoreAir, type StoreRead, type StoreSaid, storeWith } from './store-said.ts';
export { type LookedAt, taughtStoreDraws } from './store-taught.ts';
export { type StoredNow, storedNow } from './stored-now.ts';
