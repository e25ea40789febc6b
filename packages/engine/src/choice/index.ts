export { type CropAsked, cropAt, onionAt, usesAt } from './asked-crop.ts';
export { type KindNow, kindNow } from './choice-now.ts';
export {
  type ChooseProgress,
  type CoarseChoice,
  chooseKinds,
  type GrownKind,
  growKinds,
} from './choose-kinds.ts';
export { choosePlan, likeliestClass, type PlanAsked, type PlanChosen, plantOutFor } from './choose-plan.ts';
export { classNeedSunUpH } from './class-need.ts';
export { type FortnightRace, fortnightRace } from './fortnight-race.ts';
export type { GrowingOptions } from './growing-options.ts';
export { type Kind, kindsOf, type Offer, plantKey, usualMonths } from './kind.ts';
export { dealKinds, groupKinds, type KindGroup, typicalOf } from './kind-groups.ts';
export { type Packet, type PacketNote, type PacketPlant, plantOfPacket } from './packet.ts';
export { type Choice, type ChoiceReason, choiceReasonCodes, rankChoices } from './rank.ts';
export { type BestStart, type MeanTrial, type StartScan, scanStarts } from './start-scan.ts';
export { startToday } from './start-today.ts';
export { type ClassNow, type ClassSurvey, type PlaceAnswer, surveyOf, surveyPlace } from './survey.ts';
export { type StartNow, surveyWays, type WaySurvey } from './survey-ways.ts';
export { tryStarts } from './try-starts.ts';
export { type ClassUse, isAutumnStart, typeForClass, usesOfClass } from './type-for-class.ts';
export { type Way, waysOf } from './ways.ts';
export { dayInYear, weekOf, weekStarts, weeksAhead } from './week-starts.ts';
export {
  type Nudged,
  type Pull,
  strongerOf,
  whatMovesIt,
} from './what-moves-it.ts';
export { type WinterStand, winterStand } from './winter-stand.ts';
export { type ColdBed, coldBed, hindranceOn, longestTrayWeeks, workableBedC } from './workable.ts';
export { type WorthParts, worth, worthWeights } from './worth.ts';
