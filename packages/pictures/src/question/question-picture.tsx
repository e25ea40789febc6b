import { plainYearStart } from '@neckfall/answers';
import { type CommonAnswer, type DayNumber, seasonsIn, type WhenAnswer } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import type { VNode } from 'preact';
import type { DataTableProps } from '../drawing/data-table.tsx';
import { SectionRow, sectionRowOf } from '../section/index.ts';
import { StartHills, startHillsOf, startHillsTableOf } from '../start-hills/index.ts';
import { StoreYear, storeTableOf, storeYearOf } from '../store-year/index.ts';

export type QuestionPicture = {
  /** In a word, for files. */
  name: 'starts' | 'store' | 'bulbs';
  /** @param width px @param id tells pictures on one page apart */
  draw: (width: number, id: string) => VNode;
  summary: string;
  table: DataTableProps;
};

type Context = { latitudeDeg: number; today: DayNumber; speaker: Speaker };

/** What an answer was read from, as a picture: starts of a year, a store, or bulbs side by side. */
export function questionPictureOf(answer: CommonAnswer, context: Context): QuestionPicture {
  switch (answer.question) {
    case 'too-late':
    case 'start-indoors':
      return startsPicture(answer.starts, context);
    case 'how-many': {
      const { today, speaker } = context;
      const picture = storeYearOf(answer.year, today, speaker);
      return {
        name: 'store',
        draw: (width) => <StoreYear width={width} {...picture} />,
        summary: picture.summary,
        table: storeTableOf(answer.year, speaker),
      };
    }
    default:
      return bulbsPicture(answer, context.speaker);
  }
}

function startsPicture(answer: WhenAnswer, { latitudeDeg, today, speaker }: Context): QuestionPicture {
  const firstDay = plainYearStart(today, latitudeDeg);
  const asked = { answer, firstDay, today, chosen: null, speaker };
  const hills = startHillsOf(asked);
  return {
    name: 'starts',
    draw: (width, id) => <StartHills id={id} width={width} {...hills} />,
    summary: hills.summary,
    table: startHillsTableOf(asked),
  };
}

/** Two rows on a phone, one on a desk. */
const mostDrawn = 4;

function bulbsPicture(answer: CommonAnswer, speaker: Speaker): QuestionPicture {
  const entries = seasonsIn(answer).map(({ role, summary }) => ({
    name: speaker.say(`question.role.${role}`),
    summary,
    look: { colour: 'yellow', shape: 'globe' } as const,
  }));
  const { picture } = sectionRowOf(entries.slice(0, mostDrawn), speaker);
  return {
    name: 'bulbs',
    draw: (width) => <SectionRow width={width} {...picture} />,
    summary: picture.summary,
    table: sectionRowOf(entries, speaker).table,
  };
}
