import { type CommonAnswer, type DayNumber, seasonsIn } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { comingDay } from './coming-day.ts';
import { keepKind } from './keep-lots.ts';
import { seasonWords } from './question-context.ts';

/** The seasons of an answer as a table: what a picture shows, in numbers. */
export type QuestionTable = {
  caption: string;
  head: readonly string[];
  rows: readonly (readonly string[])[];
};

export function questionTable(answer: CommonAnswer, today: DayNumber, speaker: Speaker): QuestionTable {
  const { say } = speaker;
  const caption = say('question.table');
  if (answer.question === 'how-many')
    return {
      caption,
      head: [
        say('question.column.what'),
        say('question.column.start'),
        say('question.column.plants'),
        say('question.column.last'),
      ],
      rows: answer.year.lots.map((lot) => [
        keepKind(lot, speaker),
        comingDay(lot.plan.startDay, today, speaker),
        speaker.number(lot.need.plants),
        lot.lastsUntil.days ? comingDay(lot.lastsUntil.days.p50, today, speaker) : say('never'),
      ]),
    };
  return {
    caption,
    head: (['what', 'start', 'good', 'size', 'flower', 'ripe'] as const).map((column) =>
      say(`question.column.${column}`),
    ),
    rows: seasonsIn(answer).map(({ role, summary }) => {
      const { kind, date, years, size, flower, ripe } = seasonWords(summary, today, speaker);
      return [
        say(`question.role.${role}`),
        say('question.row.start', { kind, start: say(`start.${summary.plan.start}`), date }),
        years,
        size,
        flower,
        ripe,
      ];
    }),
  };
}
