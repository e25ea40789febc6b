import { LatitudeYear, latitudeYearOf, yearTableOf } from '@neckfall/pictures';
import { FitWidth } from '../../controls/FitWidth.tsx';
import { Twin } from '../../controls/Twin.tsx';
import { voice } from '../../state/settings.ts';
import { InTurn } from '../../turns/InTurn.tsx';
import type { LatitudeReply } from '../../worker/latitude-season.ts';

/** The year's days as a ridge, the kinds' needs as levels, the chosen onion on it. */
export function RidgeFigure({ reply }: { reply: LatitudeReply }) {
  const speaker = voice.value;
  const { year, others, kinds } = latitudeYearOf(reply, speaker);
  return (
    <InTurn>
      <FitWidth>
        {(width) => <LatitudeYear year={{ id: 'latitude-year', width, ...year }} others={others} />}
      </FitWidth>
      <Twin {...kinds} also={yearTableOf({ year: reply.year, speaker })} />
    </InTurn>
  );
}
