export { answerCommon } from './answer-common.ts';
export type {
  Abroad,
  CommonAnswer,
  FromAbroad,
  FromAbroadAnswer,
  HowManyAnswer,
  KitchenOnionsAnswer,
  LateSowing,
  NeverBulbedAnswer,
  SetsFlowerAnswer,
  SmallTrial,
  SowAutumnAnswer,
  StartIndoorsAnswer,
  TooLateAnswer,
  TooSmallAnswer,
  WhichOnionAnswer,
} from './common-answer.ts';
export type { CommonAsked } from './common-asked.ts';
export { type CommonQuestion, commonQuestions } from './common-questions.ts';
export { kitchenBulbMm } from './flowering-sets.ts';
export { type SeasonInRole, type SeasonRole, seasonRoles, seasonsIn } from './season-roles.ts';
export { smallHabits } from './too-small.ts';
