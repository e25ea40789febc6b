import type { Speaker } from '@neckfall/words';
import { storeName } from './keep-grounds.ts';
import { keepLotSentence } from './keep-lots.ts';
import { keepCautions, keepGapSentence, keepHeadline } from './keep-sentences.ts';
import type { AnswerTo, QuestionContext, QuestionSaid } from './question-context.ts';

/** How many to plant for a year and until when they keep, in the words of the kitchen's own page. */
export function howManySaid(
  { year }: AnswerTo<'how-many'>,
  { place, today, country }: QuestionContext,
  speaker: Speaker,
): QuestionSaid {
  const { say, quantity } = speaker;
  const { household, lots, gaps } = year;
  return {
    headline: say('question.many.head', {
      place,
      people: household.people,
      answer: lowered(keepHeadline(year, today, speaker)),
    }),
    because: [
      say('question.many.use', {
        week: quantity('crop', household.gramsPerWeek / 1000),
        store: storeName(household.store, speaker),
      }),
      ...lots.map((lot) => keepLotSentence(lot, today, country, speaker)),
      ...gaps.map((gap) => keepGapSentence(gap, speaker)),
      say('question.many.caution'),
    ],
    cautions: keepCautions(speaker),
  };
}

/** It follows a colon. */
function lowered(sentence: string): string {
  return sentence[0].toLowerCase() + sentence.slice(1);
}
