import { seasonHeadline, seeSentence, topsSentence, weekSentence } from '@neckfall/answers';
import { onion } from '../../state/onion.ts';
import { placeName } from '../../state/place.ts';
import { hrefTo } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import type { SeasonAhead } from '../../worker/season-ahead.ts';
import { hrefOfList } from '../which/address-of.ts';
import { pinned } from './pinned.ts';

const insteads = ['instead.bunching', 'instead.shallots', 'instead.potato-onions', 'instead.leeks'] as const;

/** What comes of it, what to do this week and what should be seen now. */
export function Lead({ ahead: { summary, stand } }: { ahead: SeasonAhead }) {
  const speaker = voice.value;
  const { say, reason, any } = speaker;
  const { name } = onion.value;
  const now = [
    weekSentence(summary, stand, speaker),
    seeSentence(summary, stand, speaker),
    topsSentence(summary, stand.day, speaker),
  ];
  const chosen = pinned(summary);
  return (
    <>
      <h1 class="answer">{seasonHeadline(summary, name, placeName.value, speaker)}</h1>
      <p class="because">{reason(summary.reason)}</p>
      {summary.outcome === 'no-bulb' && (
        <p class="because">
          {say('app.season.instead', { instead: any(insteads.map((instead) => say(instead))) })}
        </p>
      )}
      <p class="today">{now.filter((sentence) => sentence !== null).join(' ')}</p>
      <nav aria-label={say('app.where.next')}>
        <ul class="onward">
          <li>
            <a href={hrefTo('when', chosen)}>{say('app.season.onward.when')}</a>
          </li>
          <li>
            <a href={hrefOfList()}>{say('app.season.onward.which')}</a>
          </li>
        </ul>
      </nav>
    </>
  );
}
