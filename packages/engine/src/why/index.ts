export type { CauseFound, WhyAnswer, WhyAsked } from './answer.ts';
export { answerOdds } from './answer-odds.ts';
export { type Cause, causeKinds, causes, type SeenCause } from './causes.ts';
export type { Evidence, EvidenceCode } from './evidence.ts';
export {
  type AnswerOf,
  mostQuestions,
  passedOver,
  type Question,
  questionAnswers,
  questions,
  type Said,
} from './questions.ts';
export { type Eating, rescueOf, type Storing, type WhyCaution, whyCautions } from './rescue.ts';
export { type SeasonFacts, type StoreAsked, type Trial, tryTrial } from './season-facts.ts';
export { seenCauses } from './seen-causes.ts';
export { seenShare } from './sight.ts';
export { lastSuchDay, latestStart, sameDayIn } from './stood-since.ts';
export { mostSymptoms, type Symptom, type SymptomTime, symptoms, symptomTimes } from './symptoms.ts';
export { usualStart } from './usual-start.ts';
export type { Change, ChangeCode, GrownSo, WhatIf } from './what-if.ts';
export { whyOf } from './why-of.ts';
