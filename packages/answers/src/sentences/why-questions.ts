import { type AnswerOf, passedOver, type Question } from '@neckfall/engine';
import type { MessageKey, Speaker } from '@neckfall/words';

export function questionText(question: Question, { say }: Speaker): string {
  return say(`why.question.${question}`);
}

/** @param answer one of those of the question, or that it is passed over */
export function answerLabel<Q extends Question>(
  question: Q,
  answer: AnswerOf<Q> | typeof passedOver,
  { say }: Speaker,
): string {
  if (answer === passedOver) return say('why.not-sure');
  return say(`why.answer.${question}.${answer}` as MessageKey);
}
