import { keptLatitudeYear, LatitudeYear, latitudeYearOf, yearTableOf } from '@neckfall/pictures';
import { useMemo } from 'preact/hooks';
import { FitWidth } from '../../controls/FitWidth.tsx';
import { TakePicture } from '../../controls/TakePicture.tsx';
import { Twin } from '../../controls/Twin.tsx';
import { voice } from '../../state/settings.ts';
import { InTurn } from '../../turns/InTurn.tsx';
import type { LatitudeReply } from '../../worker/latitude-season.ts';
import { madeUp } from './made-up.ts';

type Props = {
  /** What is drawn, and the answer whose numbers stand in the table. */
  reply: LatitudeReply;
  read: LatitudeReply;
  /** Degrees, and °C warmer than usual, where the sliders rest. */
  latitudeDeg: number;
  warmerC: number;
};

/** The year's days as a ridge, the kinds' needs as levels, the chosen onion on it. */
export function RidgeFigure({ reply, read, latitudeDeg, warmerC }: Props) {
  const speaker = voice.value;
  const { year, others } = latitudeYearOf(reply, speaker);
  const table = useMemo(
    () => <Twin {...latitudeYearOf(read, speaker).kinds} also={yearTableOf({ year: read.year, speaker })} />,
    [read, speaker],
  );
  return (
    <InTurn>
      <FitWidth>
        {(width) => <LatitudeYear year={{ id: 'latitude-year', width, ...year }} others={others} />}
      </FitWidth>
      {table}
      <TakePicture
        name="days"
        what={() => speaker.say('app.latitudes.year')}
        draw={(width) => {
          const { year, others } = latitudeYearOf(read, speaker);
          return keptLatitudeYear({ year: { id: 'kept-days', width, ...year }, others });
        }}
        summary={year.summary}
        table={() => latitudeYearOf(read, speaker).kinds}
        also={() => yearTableOf({ year: read.year, speaker })}
        of={madeUp(latitudeDeg, warmerC)}
      />
    </InTurn>
  );
}
