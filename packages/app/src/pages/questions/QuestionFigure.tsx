import { questionAsked } from '@neckfall/answers';
import type { CommonAnswer } from '@neckfall/engine';
import { questionPictureOf } from '@neckfall/pictures';
import { FitWidth } from '../../controls/FitWidth.tsx';
import { TakePicture } from '../../controls/TakePicture.tsx';
import { Twin } from '../../controls/Twin.tsx';
import { place } from '../../state/place.ts';
import { voice } from '../../state/settings.ts';
import { today } from '../../state/today.ts';
import { InTurn } from '../../turns/InTurn.tsx';

/** What an answer was read from, as a picture, and its numbers. */
export function QuestionFigure({ answer }: { answer: CommonAnswer }) {
  const speaker = voice.value;
  const context = { latitudeDeg: place.value?.latitudeDeg ?? 0, today: today.value, speaker };
  const { name, draw, summary, table } = questionPictureOf(answer, context);
  return (
    <InTurn>
      <FitWidth>{(width) => draw(width, 'question')}</FitWidth>
      <Twin {...table} />
      <TakePicture
        name={name}
        what={() => questionAsked(answer.question, speaker)}
        draw={(width) => draw(width, 'kept-question')}
        summary={summary}
        table={() => table}
      />
    </InTurn>
  );
}
