import { plainYearStart, questionAsked } from '@neckfall/answers';
import { type CommonAnswer, seasonsIn, type WhenAnswer } from '@neckfall/engine';
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
import { TakePicture } from '../../controls/TakePicture.tsx';
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
      return <Starts answer={answer} />;
    case 'how-many':
      return <Store answer={answer} />;
    default:
      return <Bulbs answer={answer} />;
  }
}

function Starts({ answer }: { answer: CommonAnswer & { starts: WhenAnswer } }) {
  const speaker = voice.value;
  const firstDay = plainYearStart(today.value, place.value?.latitudeDeg ?? 0);
  const asked = { answer: answer.starts, firstDay, today: today.value, chosen: null, speaker };
  const hills = startHillsOf(asked);
  return (
    <InTurn>
      <FitWidth>{(width) => <StartHills id="question-starts" width={width} {...hills} />}</FitWidth>
      <Twin {...startHillsTableOf(asked)} />
      <TakePicture
        name="starts"
        what={() => questionAsked(answer.question, speaker)}
        draw={(width) => <StartHills id="kept-starts" width={width} {...hills} />}
        summary={hills.summary}
        table={() => startHillsTableOf(asked)}
      />
    </InTurn>
  );
}

function Store({ answer }: { answer: Extract<CommonAnswer, { question: 'how-many' }> }) {
  const speaker = voice.value;
  const { year } = answer;
  const picture = storeYearOf(year, today.value, speaker);
  return (
    <InTurn>
      <FitWidth>{(width) => <StoreYear width={width} {...picture} />}</FitWidth>
      <Twin {...storeTableOf(year, speaker)} />
      <TakePicture
        name="store"
        what={() => questionAsked(answer.question, speaker)}
        draw={(width) => <StoreYear width={width} {...picture} />}
        summary={picture.summary}
        table={() => storeTableOf(year, speaker)}
      />
    </InTurn>
  );
}

/** Two rows on a phone, one on a desk. */
const mostDrawn = 4;

function Bulbs({ answer }: { answer: CommonAnswer }) {
  const speaker = voice.value;
  const entries = seasonsIn(answer).map(({ role, summary }) => ({
    name: speaker.say(`question.role.${role}`),
    summary,
    look: { colour: 'yellow', shape: 'globe' } as const,
  }));
  const { picture } = sectionRowOf(entries.slice(0, mostDrawn), speaker);
  return (
    <InTurn>
      <FitWidth>{(width) => <SectionRow width={width} {...picture} />}</FitWidth>
      <Twin {...sectionRowOf(entries, speaker).table} />
      <TakePicture
        name="bulbs"
        what={() => questionAsked(answer.question, speaker)}
        draw={(width) => <SectionRow width={width} {...picture} />}
        summary={picture.summary}
        table={() => sectionRowOf(entries, speaker).table}
      />
    </InTurn>
  );
}
