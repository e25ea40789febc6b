import { kitchenBulbMm } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import {
  type AnswerTo,
  flowering,
  type QuestionContext,
  type QuestionSaid,
  seasonWords,
} from './question-context.ts';

/** Sets of which fewer flower seldom do, share of plants. */
const seldom = 0.2;

/** Why sets flower: their size and their store. */
export function setsFlowerSaid(
  { small, large, warm }: AnswerTo<'sets-flower'>,
  { place, today }: QuestionContext,
  speaker: Speaker,
): QuestionSaid {
  const { say, quantity, plants } = speaker;
  const sizeOf = ({ plan }: typeof small) =>
    quantity('bulbLength', plan.start === 'sets' ? plan.setSizeMm : 0);
  const isSeldom = flowering(large) < seldom;
  const values = {
    place,
    large: sizeOf(large),
    small: sizeOf(small),
    many: plants(flowering(large)),
    few: plants(flowering(small)),
  };
  return {
    headline: say(isSeldom ? 'question.sets.seldom' : 'question.sets.head', values),
    because: [
      say('question.sets.why'),
      isSeldom ? say('question.sets.undone') : say('question.sets.warm', { some: plants(flowering(warm)) }),
      say('question.sets.do', values),
      say('question.sets.when', seasonWords(small, today, speaker)),
    ],
    cautions: [say('app.caution.treated')],
  };
}

/** Sets of this size and more were tried together: 25 mm and over (Sapporo 1949–50). */
const triedMm = 25;

/** What becomes of kitchen bulbs that are planted, and what not to do with them. */
export function kitchenOnionsSaid(
  { bulb, warm, set }: AnswerTo<'kitchen-onions'>,
  { place, today }: QuestionContext,
  speaker: Speaker,
): QuestionSaid {
  const { say, quantity, plants } = speaker;
  const sprouts = bulb.emergence.days;
  const setMm = set.plan.start === 'sets' ? set.plan.setSizeMm : 0;
  return {
    headline: say('question.kitchen.head', { place, many: plants(flowering(bulb)) }),
    because: [
      say('question.kitchen.why', {
        size: quantity('bulbLength', kitchenBulbMm),
        small: quantity('bulbLength', setMm),
        cold: plants(flowering(bulb)),
        warm: plants(flowering(warm)),
        few: plants(flowering(set)),
      }),
      ...(sprouts
        ? [
            say('question.kitchen.green', {
              date: seasonWords(bulb, today, speaker).date,
              days: Math.round(sprouts.p50 - bulb.plan.startDay),
            }),
          ]
        : []),
      say('question.kitchen.seed'),
      say('question.kitchen.limit', { tried: quantity('bulbLength', triedMm) }),
    ],
    cautions: [
      say('question.kitchen.caution.rot'),
      say('question.kitchen.caution.soft'),
      say('question.kitchen.caution.treated'),
    ],
  };
}
