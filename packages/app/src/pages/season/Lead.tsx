import { seasonHeadline, seeSentence, topsSentence, weekSentence } from '@neckfall/answers';
import { AnswerHeading } from '../../controls/AnswerHeading.tsx';
import { AnswerLinks } from '../../controls/AnswerLinks.tsx';
import { onion } from '../../state/onion.ts';
import { hrefOfList } from '../../state/onion-hrefs.ts';
import { placeName } from '../../state/place.ts';
import { hrefTo } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import type { SeasonAhead } from '../../worker/season-ahead.ts';
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
      <AnswerHeading text={seasonHeadline(summary, name, placeName.value, speaker)} />
      <p class="today">{now.filter((sentence) => sentence !== null).join(' ')}</p>
      <p class="because">{reason(summary.reason)}</p>
      {summary.outcome === 'no-bulb' && (
        <p class="because">
          {say('app.season.instead', { instead: any(insteads.map((instead) => say(instead))) })}
        </p>
      )}
      <AnswerLinks
        links={[
          { href: hrefTo('when', chosen), text: say('app.season.onward.when') },
          { href: hrefOfList(), text: say('app.season.onward.which') },
        ]}
        shown={chosen}
      />
    </>
  );
}
