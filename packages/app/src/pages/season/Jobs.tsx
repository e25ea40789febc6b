import { leafCheckSentence, seasonJobs, weekWords } from '@neckfall/answers';
import type { LeafCheckpoint } from '@neckfall/engine';
import { Fold } from '../../controls/Fold.tsx';
import { voice } from '../../state/settings.ts';
import type { SeasonAhead } from '../../worker/season-ahead.ts';

/** Near the day on which leaves are to be counted, what should be seen now says as much, days. */
const nearDays = 7;

/** What the season asks of its grower, and when: the sheet for the shed. */
export function Jobs({ ahead: { summary, days, stand, leafCheckpoint } }: { ahead: SeasonAhead }) {
  const speaker = voice.value;
  const { say, dayRange } = speaker;
  return (
    <Fold class="jobs" id="jobs" title={say('app.season.jobs')}>
      <dl>
        {seasonJobs(summary, days).map(({ code, from, to }) => (
          <div key={from} class={stand.day >= from && stand.day <= to ? 'now' : ''}>
            <dt>{dayRange(from, to)}</dt>
            <dd>{weekWords(summary, code, 0, speaker)}</dd>
          </div>
        ))}
      </dl>
      {leafCheckpoint && isToCount(leafCheckpoint, stand.day) && (
        <p>{leafCheckSentence(leafCheckpoint, speaker)}</p>
      )}
    </Fold>
  );
}

/** Leaves that part good bulbs from small ones are counted until a week late; others are worth a word before. */
function isToCount({ day, parting }: LeafCheckpoint, today: number): boolean {
  return today < day - nearDays || (parting !== null && today <= day + nearDays);
}
