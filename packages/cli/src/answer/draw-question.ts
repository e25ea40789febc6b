import { questionAsked, questionSaid } from '@neckfall/answers';
import { questionPictureOf } from '@neckfall/pictures';
import type { QuestionsTold } from '../documents/answers-document.ts';
import { type PictureAnswer, pictureWidth } from './picture-answer.ts';

/** What the one question asked was answered from, as the page of questions has it. */
export function drawQuestion({ frame, country, answers: [answer] }: QuestionsTold): PictureAnswer {
  const { place, label, options, speaker } = frame;
  const { today } = options;
  const context = { latitudeDeg: place.latitudeDeg, today, speaker };
  const { draw, summary, table } = questionPictureOf(answer, context);
  const { headline } = questionSaid(answer, { place: label, today, country }, speaker);
  return {
    frame,
    title: `${questionAsked(answer.question, speaker)} ${headline}`,
    drawn: draw(pictureWidth, 'question'),
    summary,
    note: null,
    table,
    numbers: null,
  };
}
