import type { SeasonSummary } from '@neckfall/engine';
import { SectionRow, sectionOf } from '@neckfall/pictures';
import { FitWidth } from '../../controls/FitWidth.tsx';
import { Twin } from '../../controls/Twin.tsx';
import { onionLook } from '../../state/onion-look.ts';
import { voice } from '../../state/settings.ts';

/** The bulb cut through, in a poor, the middle and a good year. */
export function SectionFigure({ summary }: { summary: SeasonSummary }) {
  const { say } = voice.value;
  const { picture, table } = seasonSection(summary);
  return (
    <section class="cut" aria-labelledby="cut">
      <h2 id="cut">{say('app.season.sections')}</h2>
      <FitWidth>{(width) => <SectionRow width={width} {...picture} />}</FitWidth>
      <Twin {...table} />
    </section>
  );
}

export function seasonSection(summary: SeasonSummary) {
  return sectionOf(summary, onionLook.value, voice.value);
}
