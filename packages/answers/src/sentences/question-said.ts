import type { CommonAnswer } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import type { QuestionContext, QuestionSaid } from './question-context.ts';
import { fromAbroadSaid } from './question-of-abroad.ts';
import { tooSmallSaid } from './question-of-bulbs.ts';
import { tooLateSaid, whichOnionSaid } from './question-of-buying.ts';
import { howManySaid } from './question-of-keeping.ts';
import { neverBulbedSaid } from './question-of-no-bulbs.ts';
import { kitchenOnionsSaid, setsFlowerSaid } from './question-of-sets.ts';
import { sowAutumnSaid, startIndoorsSaid } from './question-of-sowing.ts';

/** A common question answered in sentences: the answer first, then why, then where care is needed. */
export function questionSaid(answer: CommonAnswer, context: QuestionContext, speaker: Speaker): QuestionSaid {
  switch (answer.question) {
    case 'never-bulbed':
      return neverBulbedSaid(answer, context, speaker);
    case 'which-onion':
      return whichOnionSaid(answer, context, speaker);
    case 'too-late':
      return tooLateSaid(answer, context, speaker);
    case 'too-small':
      return tooSmallSaid(answer, context, speaker);
    case 'sets-flower':
      return setsFlowerSaid(answer, context, speaker);
    case 'kitchen-onions':
      return kitchenOnionsSaid(answer, context, speaker);
    case 'from-abroad':
      return fromAbroadSaid(answer, context, speaker);
    case 'sow-autumn':
      return sowAutumnSaid(answer, context, speaker);
    case 'start-indoors':
      return startIndoorsSaid(answer, context, speaker);
    case 'how-many':
      return howManySaid(answer, context, speaker);
  }
}
