import { LatitudeYear, latitudeYearOf, yearTableOf } from '@neckfall/pictures';
import { useMemo } from 'preact/hooks';
import { FitWidth } from '../../controls/FitWidth.tsx';
import { Twin } from '../../controls/Twin.tsx';
import { voice } from '../../state/settings.ts';
import { InTurn } from '../../turns/InTurn.tsx';
import type { LatitudeReply } from '../../worker/latitude-season.ts';

type Props = {
  /** What is drawn, and the answer whose numbers stand in the table. */
  reply: LatitudeReply;
  read: LatitudeReply;
};

/** The year's days as a ridge, the kinds' needs as levels, the chosen onion on it. */
export function RidgeFigure({ reply, read }: Props) {
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
    </InTurn>
  );
}
