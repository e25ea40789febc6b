import { questionAsked, questionSaid, questionTable } from '@neckfall/answers';
import type { CommonAnswer } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { type QuestionsTold, questionList } from '../documents/answers-document.ts';
import { howWeKnow } from './how-we-know.ts';
import { table } from './table.ts';
import { wrap } from './wrap.ts';

/** All questions, each with its answer in a sentence or two. */
export function answersInShort(told: QuestionsTold): string {
  const { frame, answers } = told;
  const { speaker, label, place } = frame;
  const { say } = speaker;
  const lines = answers.map((answer, at) => {
    // the place in full stands at the head of all
    const { headline } = saidOf(answer, told, place.town?.name ?? label);
    const asked = wrap(`${at + 1}. ${questionAsked(answer.question, speaker)} (${answer.question})`, 3);
    return `${asked}\n   ${wrap(headline, 3)}`;
  });
  const more = wrap(say('answers-told.more'));
  const head = say('answers-told.head', { place: label });
  return `${[head, lines.join('\n'), more, howWeKnow(frame, null, null)].join('\n\n')}\n`;
}

/** One question: the answer, why, the seasons it was read from, where care is needed, what all this rests on. */
export function answerInFull(told: QuestionsTold): string {
  const { frame, answers } = told;
  const { speaker, options } = frame;
  const { say } = speaker;
  const sections = answers.flatMap((answer) => {
    const { headline, because, cautions } = saidOf(answer, told);
    const { caption, head, rows } = questionTable(answer, options.today, speaker);
    return [
      [questionAsked(answer.question, speaker), wrap(headline)].join('\n'),
      ...(because.length > 0 ? [because.map((sentence) => wrap(sentence)).join('\n')] : []),
      ...(rows.length > 0
        ? [
            `${caption}\n${table(
              head.map((title) => ({ title })),
              rows,
            )}`,
          ]
        : []),
      ...titled(say('app.cautions'), cautions),
    ];
  });
  return `${[...sections, howWeKnow(frame, null, null)].join('\n\n')}\n`;
}

function titled(title: string, lines: readonly string[]): string[] {
  return lines.length === 0 ? [] : [[title, ...lines.map((line) => `  ${wrap(line, 2)}`)].join('\n')];
}

function saidOf(answer: CommonAnswer, { frame, country }: QuestionsTold, place = frame.label) {
  const context = { place, today: frame.options.today, country };
  return questionSaid(answer, context, frame.speaker);
}

/** What may be asked, a line each. */
export function questionsText(speaker: Speaker): string {
  const rows = questionList(speaker).map(({ id, asked }) => [id, asked]);
  return `${speaker.say('answers-told.list')}\n${table([{ title: '' }, { title: '' }], rows)}\n`;
}
