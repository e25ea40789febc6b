import type { ClassAnswer } from '@neckfall/engine';
import { Twin } from '../../controls/Twin.tsx';
import { cropLineOf, FitWidth, YearLine, yearLineOf, yearTableOf } from '../../pictures/index.ts';
import { voice } from '../../state/settings.ts';
import { today } from '../../state/today.ts';
import type { WherePicture } from '../../worker/where.ts';

type Props = { picture: WherePicture; best: ClassAnswer };

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
    <>
      <FitWidth>{(width) => <YearLine id="year-line" width={width} {...line} />}</FitWidth>
      <Twin {...yearTableOf({ year, speaker })} />
    </>
  );
}
