import type { AdvisedYear } from '@neckfall/answers';
import type { ClassAnswer } from '@neckfall/engine';
import { cropLineOf, YearLine, yearLineOf, yearTableOf } from '@neckfall/pictures';
import { FitWidth } from '../../controls/FitWidth.tsx';
import { TakePicture } from '../../controls/TakePicture.tsx';
import { YearTwin } from '../../controls/YearTwin.tsx';
import { voice } from '../../state/settings.ts';
import { today } from '../../state/today.ts';
import { InTurn } from '../../turns/InTurn.tsx';

type Props = { picture: AdvisedYear; best: ClassAnswer };

/** The year here with the crop that is advised on it. */
export function YearFigure({ picture: { year, needSunUpH, days }, best: { summary } }: Props) {
  const speaker = voice.value;
  const isShown = today.value >= year.firstDay && today.value < year.firstDay + year.sunUpH.length;
  const line = yearLineOf({
    year,
    needSunUpH,
    today: isShown ? today.value : null,
    crop: days.length > 0 ? cropLineOf(summary, days, speaker) : null,
    speaker,
  });
  return (
    <InTurn>
      <FitWidth>{(width) => <YearLine id="year-line" width={width} {...line} />}</FitWidth>
      <YearTwin year={year} />
      <TakePicture
        name="year"
        what={() => speaker.say('app.take.of.place-year')}
        draw={(width) => <YearLine id="kept-year" width={width} {...line} note={null} />}
        summary={line.summary}
        note={line.note}
        table={() => yearTableOf({ year, speaker })}
      />
    </InTurn>
  );
}
