import type { SeasonSummary } from '@neckfall/engine';
import { SectionRow, sectionOf } from '@neckfall/pictures';
import { FitWidth } from '../../controls/FitWidth.tsx';
import { TakePicture } from '../../controls/TakePicture.tsx';
import { Twin } from '../../controls/Twin.tsx';
import { grownSite } from '../../state/grown-site.ts';
import { onionLook } from '../../state/onion-look.ts';
import { voice } from '../../state/settings.ts';

/** The bulb cut through, in a poor, the middle and a good year. */
export function SectionFigure({ summary }: { summary: SeasonSummary }) {
  const { say } = voice.value;
  const { picture, table } = sectionOf(summary, onionLook.value, voice.value);
  return (
    <section class="cut" aria-labelledby="cut">
      <h2 id="cut">{say('app.season.sections')}</h2>
      <FitWidth>{(width) => <SectionRow width={width} {...picture} />}</FitWidth>
      <Twin {...table} />
      <TakePicture
        name="bulbs"
        day={summary.plan.startDay}
        what={() => say('app.season.sections')}
        draw={(width) => <SectionRow width={width} {...picture} />}
        summary={picture.summary}
        table={() => table}
        weather={grownSite.value?.weather ? 'some' : 'drawn'}
      />
    </section>
  );
}
