import {
  learntSentences,
  seasonHeadline,
  seeSentence,
  standingSentences,
  standsAsUsual,
  topsSentence,
  weekSentence,
} from '@neckfall/answers';
import type { SeasonSummary } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
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
export function Lead({ ahead }: { ahead: SeasonAhead }) {
  const { summary, stand } = ahead;
  const speaker = voice.value;
  const { name } = onion.value;
  const [counted] = countedSentences(ahead, speaker);
  const now = [
    weekSentence(summary, stand, speaker),
    counted ?? seeSentence(summary, stand, speaker),
    topsSentence(summary, stand.day, speaker),
  ];
  return (
    <>
      <AnswerHeading text={seasonHeadline(summary, name, placeName.value, speaker)} />
      <p class="today">{now.filter((sentence) => sentence !== null).join(' ')}</p>
    </>
  );
}

/** What the counts mean, what can still be done, and what was learnt of these plants; nothing before anything was seen. */
export function Learnt({ ahead }: { ahead: SeasonAhead }) {
  const speaker = voice.value;
  if (!ahead.learnt) return null;
  const [, ...means] = countedSentences(ahead, speaker);
  const { season } = ahead.learnt;
  const learnt = learntSentences(season, speaker);
  const isUsual = season.observations > 0 && learnt.length === 0 && standsAsUsual(season.standing);
  const said = [...means, ...learnt, ...(isUsual ? [speaker.say('learnt.as-usual')] : [])];
  return said.length > 0 ? <p class="learnt">{said.join(' ')}</p> : null;
}

/** A count stands for the crop as it is for so long, days. */
const countedDays = 21;

/** How the crop stands by the leaves counted last, first of all; none where none were counted of late. */
function countedSentences({ summary, stand, learnt }: SeasonAhead, speaker: Speaker): string[] {
  const standing = learnt?.season.standing;
  if (!learnt || !standing || stand.day - standing.day > countedDays) return [];
  return standingSentences(learnt.season, summary, learnt.expected, speaker);
}

/** Why, what to grow instead where nothing comes of it, and where to go from here. */
export function Onward({ summary }: { summary: SeasonSummary }) {
  const { say, reason, any } = voice.value;
  return (
    <>
      <p class="because">{reason(summary.reason)}</p>
      {summary.outcome === 'no-bulb' && (
        <p class="because">
          {say('app.season.instead', { instead: any(insteads.map((instead) => say(instead))) })}
        </p>
      )}
      <AnswerLinks
        links={[
          { href: hrefTo('when', pinned(summary)), text: say('app.season.onward.when') },
          { href: hrefOfList(), text: say('app.season.onward.which') },
          { href: hrefTo('weather'), text: say('app.weather.link') },
        ]}
      />
    </>
  );
}
