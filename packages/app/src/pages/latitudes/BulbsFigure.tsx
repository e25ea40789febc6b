import type { SeasonSummary } from '@neckfall/engine';
import { SectionRow, sectionRowOf } from '@neckfall/pictures';
import type { Speaker } from '@neckfall/words';
import { useMemo } from 'preact/hooks';
import { FitWidth } from '../../controls/FitWidth.tsx';
import { TakePicture } from '../../controls/TakePicture.tsx';
import { Twin } from '../../controls/Twin.tsx';
import { voice } from '../../state/settings.ts';
import { InTurn } from '../../turns/InTurn.tsx';
import { kindLooks } from './kind-looks.ts';
import { madeUp } from './made-up.ts';

/** Five large onions fill so many millimetres. */
const rowMm = 440;
const scales = { least: 1.1, most: 1.6 } as const;

type Props = {
  /** What its table is called: no two on the page alike. */
  title: string;
  summaries: readonly SeasonSummary[];
  /** Those whose numbers stand in the table, where they are others. */
  read?: readonly SeasonSummary[] | undefined;
  /** Degrees, and °C warmer than usual. */
  latitudeDeg: number;
  warmerC: number;
};

/** Kinds cut through, in a row and to one scale, which stays the same while a slider is moved. */
export function BulbsFigure({ title, summaries, read = summaries, latitudeDeg, warmerC }: Props) {
  const speaker = voice.value;
  const { picture } = rowOf(summaries, speaker);
  const table = useMemo(
    () => <Twin {...rowOf(read, speaker).table} caption={title} />,
    [read[0], title, speaker],
  );
  return (
    <InTurn>
      <FitWidth>
        {(width) => (
          <SectionRow
            width={width}
            {...picture}
            pxPerMm={Math.max(scales.least, Math.min(scales.most, width / rowMm))}
          />
        )}
      </FitWidth>
      {table}
      <TakePicture
        name="bulbs"
        what={() => title}
        draw={(width) => <SectionRow width={width} {...rowOf(read, speaker).picture} />}
        summary={picture.summary}
        table={() => rowOf(read, speaker).table}
        of={madeUp(latitudeDeg, warmerC)}
      />
    </InTurn>
  );
}

function rowOf(summaries: readonly SeasonSummary[], speaker: Speaker) {
  return sectionRowOf(
    summaries.map((summary) => ({
      name: speaker.say(`type-head.${summary.plan.type}`),
      summary,
      look: kindLooks[summary.plan.type],
    })),
    speaker,
  );
}
