import type { KeepYear } from '@neckfall/engine';
import { StoreYear, storeTableOf, storeYearOf } from '@neckfall/pictures';
import { FitWidth } from '../../controls/FitWidth.tsx';
import { TakePicture } from '../../controls/TakePicture.tsx';
import { Twin } from '../../controls/Twin.tsx';
import { voice } from '../../state/settings.ts';
import { today } from '../../state/today.ts';
import { InTurn } from '../../turns/InTurn.tsx';

/** The store through the year, and its numbers. */
export function StoreFigure({ year }: { year: KeepYear }) {
  const speaker = voice.value;
  const picture = storeYearOf(year, today.value, speaker);
  return (
    <InTurn>
      <FitWidth>{(width) => <StoreYear width={width} {...picture} />}</FitWidth>
      <Twin {...storeTableOf(year, speaker)} />
      <TakePicture
        name="store"
        what={() => speaker.say('app.take.of.store')}
        draw={(width) => <StoreYear width={width} {...picture} />}
        summary={picture.summary}
        table={() => storeTableOf(year, speaker)}
      />
    </InTurn>
  );
}
