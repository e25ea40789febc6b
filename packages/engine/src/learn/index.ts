export { beliefAfter, beliefSite } from './belief.ts';
export { type LearntSeason, learnSeason, learntSite } from './learn-season.ts';
export {
  type Belief,
  type Estimate,
  type LearntParameter,
  learntParameters,
  usualBelief,
} from './parameters.ts';
export type { LearntShift } from './shifts.ts';
export type { Standing } from './standing.ts';
