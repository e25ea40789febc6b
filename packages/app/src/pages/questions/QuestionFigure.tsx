import { plainYearStart } from '@neckfall/answers';
import { type CommonAnswer, type SeasonInRole, seasonsIn, type WhenAnswer } from '@neckfall/engine';
import {
  SectionRow,
  StartHills,
  StoreYear,
  sectionRowOf,
  startHillsOf,
  startHillsTableOf,
  storeTableOf,
  storeYearOf,
} from '@neckfall/pictures';
import { FitWidth } from '../../controls/FitWidth.tsx';
import { Twin } from '../../controls/Twin.tsx';
import { place } from '../../state/place.ts';
import { voice } from '../../state/settings.ts';
import { today } from '../../state/today.ts';
import { InTurn } from '../../turns/InTurn.tsx';

/** What an answer was read from, as a picture: starts of a year, a store, or bulbs side by side. */
export function QuestionFigure({ answer }: { answer: CommonAnswer }) {
  switch (answer.question) {
    case 'too-late':
    case 'start-indoors':
      return <Starts starts={answer.starts} />;
    case 'how-many':
      return <Store answer={answer} />;
    default:
      return <Bulbs seasons={seasonsIn(answer)} />;
  }
}

function Starts({ starts }: { starts: WhenAnswer }) {
  const speaker = voice.value;
  const firstDay = plainYearStart(today.value, place.value?.latitudeDeg ?? 0);
  const asked = { answer: starts, firstDay, today: today.value, chosen: null, speaker };
  return (
    <InTurn>
      <FitWidth>
        {(width) => <StartHills id="question-starts" width={width} {...startHillsOf(asked)} />}
      </FitWidth>
      <Twin {...startHillsTableOf(asked)} />
    </InTurn>
  );
}

function Store({ answer: { year } }: { answer: Extract<CommonAnswer, { question: 'how-many' }> }) {
  const speaker = voice.value;
  return (
    <InTurn>
      <FitWidth>
        {(width) => <StoreYear width={width} {...storeYearOf(year, today.value, speaker)} />}
      </FitWidth>
      <Twin {...storeTableOf(year, speaker)} />
    </InTurn>
  );
}

/** Two rows on a phone, one on a desk. */
const mostDrawn = 4;

function Bulbs({ seasons }: { seasons: readonly SeasonInRole[] }) {
  const speaker = voice.value;
  const entries = seasons.map(({ role, summary }) => ({
    name: speaker.say(`question.role.${role}`),
    summary,
    look: { colour: 'yellow', shape: 'globe' } as const,
  }));
  const { picture } = sectionRowOf(entries.slice(0, mostDrawn), speaker);
  return (
    <InTurn>
      <FitWidth>{(width) => <SectionRow width={width} {...picture} />}</FitWidth>
      <Twin {...sectionRowOf(entries, speaker).table} />
    </InTurn>
  );
}
