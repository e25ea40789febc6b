import { kindsSentence, startsHeadline, togetherHeadline, zoneSentence } from '@neckfall/answers';
import { classOfType } from '@neckfall/engine';
import { AnswerHeading } from '../../controls/AnswerHeading.tsx';
import { placeName } from '../../state/place.ts';
import { asked } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import { type Compared, type Drawn, lineOn, toldLines } from './drawn-lines.ts';
import { restingDay } from './moved-day.ts';
import { shownDay } from './shown-day.ts';

type Props = { drawn: Drawn; compared: Compared };

/** What the comparison shows, in a sentence; under it which kinds do best, or which is shown on all lines. */
export function Lead({ drawn, compared }: Props) {
  const speaker = voice.value;
  const { say } = speaker;
  const told = toldLines(drawn.lines, compared, speaker);
  if (compared === 'starts') {
    const type = told[0].summary.plan.type;
    return (
      <>
        <AnswerHeading text={startsHeadline(told, placeName.value, speaker)} />
        <p class="because">
          {say('app.together.of-onion', { class: say(`class.${classOfType[type]}`), place: placeName.value })}
        </p>
      </>
    );
  }
  // the sentence stands still while the day is moved
  const day = shownDay(drawn, restingDay.value);
  const lines = told.map((line, i) => {
    const { day: ownDay, sunUpH } = lineOn(drawn.lines[i], day);
    return { ...line, day: ownDay, sunUpH };
  });
  const { class: chosen, start } = asked.value;
  const isBest = chosen === null;
  const zone = isBest ? zoneSentence(told, speaker) : null;
  return (
    <>
      <h1 class="answer">{togetherHeadline(lines, speaker)}</h1>
      <p class="because">{isBest ? kindsSentence(told, speaker) : sameWords()}</p>
      {zone !== null && <p>{zone}</p>}
    </>
  );

  function sameWords(): string {
    const kind = say(`class.${chosen!}`);
    if (start === null) return say('app.together.same', { class: kind });
    return say('app.together.same-start', { crop: say(`crop-kind.${start}`, { type: kind }) });
  }
}
