import { peopleIn, questionsMeant } from '@neckfall/answers';
import type { CommonQuestion } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { refuse } from '../refusal/refusal.ts';

/** Options of `answer` alone, as commander gives them. */
export type RawQuestionOptions = { list?: boolean; people?: string; store?: string };

/** What was asked, and for how many people where the question says so. */
export type QuestionRead = { question: CommonQuestion; people: number | null };

const mostNear = 3;

/** A question by its id or in words of one's own. */
export function readQuestion(text: string, speaker: Speaker): QuestionRead {
  const { meant, near, elsewhere } = questionsMeant(text, speaker);
  if (meant !== null)
    return { question: meant, people: meant === 'how-many' ? peopleIn(text, speaker) : null };
  throw refuse('question-unknown', {
    field: 'QUESTION',
    values: { value: text, elsewhere: elsewhere ?? 'none' },
    // where a command answers it, questions that come near would lead astray
    nearest: elsewhere === null ? near.slice(0, mostNear) : [],
  });
}
