export type { Crop } from './crop.ts';
export {
  type Draw,
  type DrawSpread,
  drawSpread,
  drawsOf,
  leastFactor,
  noDraw,
} from './draws.ts';
export { fullSizeDryG, judge, limits, outcomeOf, smallBulbG } from './judge.ts';
export { type LeafCheckpoint, type LeafParting, leafCheckpoint } from './leaf-checkpoint.ts';
export type { DayStretch, LocalPractice } from './local-practice.ts';
export { medianSeasonDays } from './median-season.ts';
export { neededSunUpH } from './needed-sun-up.ts';
export { indoorNurseryC, plantingOut, seedbedFromC } from './nursery.ts';
export type { Outcome } from './outcome.ts';
export { stage } from './outcome.ts';
export {
  longestNurseryDays,
  type Plan,
  type PlanForm,
  type PlanWithout,
  planDefaults,
  planFields,
  plantOutDayOf,
  startedOn,
} from './plan.ts';
export { reasonCodes } from './reason.ts';
export { enoughDryG, referenceBulbG } from './reference-bulb.ts';
export { type Runner, runnerOf } from './run.ts';
export { longestSeason } from './season-end.ts';
export { calendarYear, driverIndex, openSite, type Site, type SiteOptions } from './site.ts';
export { type SkyGround, skyGround } from './sky-ground.ts';
export { sowingFor } from './sowing-for.ts';
export { type SpanPart, type SpanParts, spanParts } from './span-parts.ts';
export { canopyOf } from './steps/index.ts';
export { dateSpread, percentiles, runPlan, summarise } from './summarise.ts';
export type {
  ClassAnswer,
  DateSpread,
  DayRow,
  Hindrance,
  OnsetSpread,
  Reason,
  SeasonShares,
  SeasonSummary,
  Spread,
  StartTrial,
  StartWindow,
  TodayAnswer,
  WhenAnswer,
} from './summary.ts';
export { type DayTrace, dayTrace } from './trace.ts';
export { marketableKgM2 } from './yield.ts';
