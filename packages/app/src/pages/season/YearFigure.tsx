import {
  cropLineOf,
  type WorkMark,
  workTableOf,
  YearLine,
  yearLineOf,
  yearTableOf,
} from '@neckfall/pictures';
import { useMemo } from 'preact/hooks';
import { FitWidth } from '../../controls/FitWidth.tsx';
import { TakePicture } from '../../controls/TakePicture.tsx';
import { YearTwin } from '../../controls/YearTwin.tsx';
import { grownSite } from '../../state/grown-site.ts';
import { seen } from '../../state/planting.ts';
import { voice } from '../../state/settings.ts';
import { InTurn } from '../../turns/InTurn.tsx';
import type { SeasonAhead } from '../../worker/season-ahead.ts';
import { shownWork } from './jobs/shown-work.ts';
import { leafCounts } from './seen/leaf-counts.ts';

/** The year with this crop on it. */
export function YearFigure({ ahead }: { ahead: SeasonAhead }) {
  const speaker = voice.value;
  // its words are one task, its drawing another
  const line = useMemo(() => seasonYearLine(ahead), [ahead, speaker, seen.value]);
  const work = () => (line.crop && line.crop.work.length > 0 ? workTableOf(line.crop, speaker) : null);
  return (
    <section class="the-year" aria-labelledby="the-year">
      <h2 id="the-year" class="unseen">
        {speaker.say('app.season.picture')}
      </h2>
      <InTurn>
        <FitWidth>{(width) => <YearLine id="season-year" width={width} {...line} note={null} />}</FitWidth>
        <YearTwin year={ahead.year} note={line.note} also={work()} />
        <TakePicture
          name="year"
          day={ahead.summary.plan.startDay}
          what={() => speaker.say('app.season.picture')}
          draw={(width) => <YearLine id="kept-year" width={width} {...line} note={null} />}
          summary={line.summary}
          note={line.note}
          table={() => yearTableOf({ year: ahead.year, speaker })}
          also={work}
          weather={grownSite.value?.weather ? 'some' : 'drawn'}
        />
      </InTurn>
    </section>
  );
}

/** What the year line of a season is drawn from. */
export function seasonYearLine(ahead: SeasonAhead, work: readonly WorkMark[] = shownWork(ahead)) {
  const { summary, days, stand, year, needSunUpH } = ahead;
  const { day } = stand;
  const isShown = day >= year.firstDay && day < year.firstDay + year.sunUpH.length;
  const speaker = voice.value;
  return yearLineOf({
    year,
    needSunUpH,
    today: isShown ? day : null,
    crop: cropLineOf(summary, days, speaker, leafCounts(seen.value), work),
    speaker,
  });
}
