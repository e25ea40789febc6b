import type { Site } from '../season/index.ts';
import type { CommonAnswer } from './common-answer.ts';
import type { CommonAsked } from './common-asked.ts';
import type { CommonQuestion } from './common-questions.ts';
import { kitchenOnions, setsFlower } from './flowering-sets.ts';
import { fromAbroad } from './from-abroad.ts';
import { howMany } from './how-many.ts';
import { tooLate, whichOnion } from './in-time-today.ts';
import { neverBulbed } from './never-bulbed.ts';
import { sowAutumn } from './sow-autumn.ts';
import { startIndoors } from './start-indoors.ts';
import { tooSmall } from './too-small.ts';

type AnswerTo<Question extends CommonQuestion> = Extract<CommonAnswer, { question: Question }>;

const answers: { [Question in CommonQuestion]: (site: Site, asked: CommonAsked) => AnswerTo<Question> } = {
  'never-bulbed': neverBulbed,
  'which-onion': whichOnion,
  'too-late': tooLate,
  'too-small': tooSmall,
  'sets-flower': setsFlower,
  'kitchen-onions': kitchenOnions,
  'from-abroad': fromAbroad,
  'sow-autumn': sowAutumn,
  'start-indoors': startIndoors,
  'how-many': howMany,
};

/** A common question answered for a place by growing it there: numbers alone, of the same runs as all other answers. */
export function answerCommon<Question extends CommonQuestion>(
  site: Site,
  question: Question,
  asked: CommonAsked,
): AnswerTo<Question> {
  return answers[question](site, asked);
}
