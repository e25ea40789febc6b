import { packetHeadline } from '@neckfall/answers';
import type { Choice } from '@neckfall/engine';
import { placeName } from '../../state/place.ts';
import { hrefTo } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';

/** Whether this onion suits, why, and where to go from it. */
export function PacketLead({ choices }: { choices: readonly Choice[] }) {
  const speaker = voice.value;
  const { say, reason } = speaker;
  const [best] = choices;
  const { start, startDay } = best.summary.plan;
  return (
    <>
      <h1 class="answer">{packetHeadline(best, placeName.value, speaker)}</h1>
      <p class="because">{reason(best.summary.reason)}</p>
      <nav aria-label={say('app.where.next')}>
        <ul class="onward">
          <li>
            <a href={hrefTo('when', { start, date: null, plantOut: null })}>{say('app.which.when')}</a>
          </li>
          <li>
            <a href={hrefTo('season', { start, date: startDay, plantOut: null })}>
              {say('app.which.season')}
            </a>
          </li>
        </ul>
      </nav>
    </>
  );
}
