export { beliefAfter, beliefSite } from './belief.ts';
export { type LearntSeason, learnSeason, learntSite } from './learn-season.ts';
export { believedOf, plantingBefore, plantingLearntFrom } from './learnt-from.ts';
export {
  type Belief,
  drawOf,
  type Estimate,
  type LearntParameter,
  learntParameters,
  usualBelief,
  usualSpread,
  usualValues,
  valuesOf,
  yearlyShare,
} from './parameters.ts';
export type { LearntShift } from './shifts.ts';
export type { Standing } from './standing.ts';
export { resampled, tempered, weightsOf } from './weights.ts';
