import { seasonEnds, seasonRows } from '@neckfall/answers';
import { type SeasonSummary, startWays } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { Fold } from '../../controls/Fold.tsx';
import { hrefTo } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';

/** How the years go, and what becomes of the plants of one bed: two things never mixed. */
export function Risks({ summary }: { summary: SeasonSummary }) {
  const speaker = voice.value;
  const { say, years, reason } = speaker;
  return (
    <Fold class="risks" id="wrong" title={say('app.season.wrong')}>
      <p>{reason(summary.reason)}</p>
      <div class="two">
        <div>
          <h3>{say('app.season.wrong.years')}</h3>
          <ul>
            {seasonEnds(summary).map(([verdict, share]) => (
              <li key={verdict}>
                {say(`app.season.wrong.verdict.${verdict}`, { years: years(share, summary.years) })}
              </li>
            ))}
          </ul>
        </div>
        <div>
          <h3>{say('app.season.wrong.plants')}</h3>
          <ul>
            {plantLines(summary, speaker).map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </div>
      </div>
      <p>
        <a href={hrefTo('why')}>{say('app.why.link')}</a>
      </p>
    </Fold>
  );
}

function plantLines(summary: SeasonSummary, speaker: Speaker): string[] {
  const { say, plants } = speaker;
  const lines = seasonRows(summary, speaker)
    .filter(({ key }) => key === 'season.row.bolted' || key === 'season.row.winter-killed')
    .map(({ title, middle, range }) => say('app.season.wrong.plant', { title, plants: middle, range }));
  const isSown = startWays[summary.plan.start].from === 'seed';
  return [
    ...(isSown ? [say('app.season.wrong.stand', { plants: plants(summary.emergedShare) })] : []),
    ...(lines.length > 0 ? lines : [say('app.season.wrong.no-plants')]),
  ];
}
