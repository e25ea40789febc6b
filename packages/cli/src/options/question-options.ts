import { questionsMeant } from '@neckfall/answers';
import type { CommonQuestion } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { refuse } from '../refusal/refusal.ts';

/** Options of `answer` alone, as commander gives them. */
export type RawQuestionOptions = { list?: boolean; people?: string; store?: string };

const mostNear = 3;

/** A question by its id or in words of one's own. */
export function readQuestion(text: string, speaker: Speaker): CommonQuestion {
  const { meant, near } = questionsMeant(text, speaker);
  if (meant !== null) return meant;
  throw refuse('question-unknown', {
    field: 'QUESTION',
    values: { value: text },
    nearest: near.slice(0, mostNear),
  });
}
