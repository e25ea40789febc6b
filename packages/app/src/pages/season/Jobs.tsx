import { seasonJobs, weekWords } from '@neckfall/answers';
import { voice } from '../../state/settings.ts';
import type { SeasonAhead } from '../../worker/season-ahead.ts';
import { capital } from './capital.ts';

/** What the season asks of its grower, and when: the sheet for the shed. */
export function Jobs({ ahead: { summary, days, stand } }: { ahead: SeasonAhead }) {
  const speaker = voice.value;
  const { say, dayRange } = speaker;
  return (
    <section class="jobs" aria-labelledby="jobs">
      <h2 id="jobs">{say('app.season.jobs')}</h2>
      <dl>
        {seasonJobs(summary, days).map(({ code, from, to }) => (
          <div key={from} class={stand.day >= from && stand.day <= to ? 'now' : ''}>
            <dt>{dayRange(from, to)}</dt>
            <dd>{capital(weekWords(summary, code, 0, speaker))}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
}
