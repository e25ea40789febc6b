import type { SeasonSummary } from '@neckfall/engine';
import { Twin } from '../../controls/Twin.tsx';
import { FitWidth, type OnionColour, SectionRow, sectionOf } from '../../pictures/index.ts';
import { onion } from '../../state/onion.ts';
import { asked } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import { isPrinting } from './printing.ts';

/** Half a sheet, px. */
const paperWidth = 540;

/** The bulb cut through, in a poor, the middle and a good year. */
export function SectionFigure({ summary }: { summary: SeasonSummary }) {
  const { say } = voice.value;
  const { picture, table } = seasonSection(summary);
  return (
    <section class="cut" aria-labelledby="cut">
      <h2 id="cut">{say('app.season.sections')}</h2>
      <FitWidth>
        {(width) => <SectionRow width={isPrinting.value ? paperWidth : width} {...picture} />}
      </FitWidth>
      <Twin {...table} />
    </section>
  );
}

export function seasonSection(summary: SeasonSummary) {
  const colour: OnionColour = onion.value.cultivar?.colour ?? asked.value.skin ?? 'yellow';
  return sectionOf(summary, colour, voice.value);
}
