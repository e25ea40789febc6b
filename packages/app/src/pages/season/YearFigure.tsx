import { Twin } from '../../controls/Twin.tsx';
import { cropLineOf, FitWidth, YearLine, yearLineOf, yearTableOf } from '../../pictures/index.ts';
import { voice } from '../../state/settings.ts';
import type { SeasonAhead } from '../../worker/season-ahead.ts';
import { isPrinting } from './printing.ts';

/** Drawn a little wider than a sheet and put on it smaller, px. */
const paperWidth = 1160;

/** The year with this crop on it. */
export function YearFigure({ ahead }: { ahead: SeasonAhead }) {
  const speaker = voice.value;
  const { year } = ahead;
  return (
    <section class="the-year" aria-labelledby="the-year">
      <h2 id="the-year">{speaker.say('app.season.picture')}</h2>
      <FitWidth>
        {(width) => (
          <YearLine
            id="season-year"
            width={isPrinting.value ? paperWidth : width}
            {...seasonYearLine(ahead)}
          />
        )}
      </FitWidth>
      <Twin {...yearTableOf({ year, speaker })} />
    </section>
  );
}

/** What the year line of a season is drawn from. */
export function seasonYearLine({ summary, days, stand, year, needSunUpH }: SeasonAhead) {
  const { day } = stand;
  const isShown = day >= year.firstDay && day < year.firstDay + year.sunUpH.length;
  const speaker = voice.value;
  return yearLineOf({
    year,
    needSunUpH,
    today: isShown ? day : null,
    crop: cropLineOf(summary, days, speaker),
    speaker,
  });
}
