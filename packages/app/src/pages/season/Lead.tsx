import { plantsSentences, seasonHeadline, seeSentence, topsSentence } from '@neckfall/answers';
import type { DayNumber, SeasonSummary, Symptom, Verdict } from '@neckfall/engine';
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

/** What a grower would see of a season that does not end well. */
const seenOf = {
  bolts: 'flowered',
  'no-bulb': 'no-bulb',
  'not-ripe': 'tops-stood',
  small: 'small',
  'winter-killed': 'died-in-winter',
} as const satisfies Record<Exclude<Verdict, 'good'>, Symptom>;

/** What comes of it. */
export function Lead({ ahead: { summary } }: { ahead: SeasonAhead }) {
  return <AnswerHeading text={seasonHeadline(summary, onion.value.name, placeName.value, voice.value)} />;
}

/** What should be seen of it now, and when its tops go over. */
export function Now({ ahead }: { ahead: SeasonAhead }) {
  const { summary, stand } = ahead;
  const speaker = voice.value;
  const liftedOn = ahead.learnt?.season.liftedOn ?? null;
  const now =
    liftedOn === null
      ? [
          plantsOf(ahead, speaker)?.stands[0] ?? seeSentence(summary, stand, speaker),
          topsSentence(summary, stand.day, speaker),
        ]
      : [liftedSentence(summary, liftedOn, speaker)];
  const said = now.filter((sentence) => sentence !== null);
  return said.length > 0 ? <p class="today">{said.join(' ')}</p> : null;
}

/** Of a crop lifted before its tops were to go over, what is said of later days is no promise any more. */
function liftedSentence(summary: SeasonSummary, liftedOn: DayNumber, speaker: Speaker): string | null {
  const { days } = summary.neckFall;
  return days !== null && days.p50 <= liftedOn
    ? topsSentence(summary, liftedOn + 1, speaker)
    : speaker.say('learnt.lifted', { date: speaker.day(liftedOn) });
}

/** What the counts mean, what can still be done, and what was learnt of these plants; nothing before anything was seen. */
export function Learnt({ ahead }: { ahead: SeasonAhead }) {
  const speaker = voice.value;
  const plants = plantsOf(ahead, speaker);
  if (!plants) return null;
  const said = [...plants.stands.slice(1), ...plants.learnt];
  return said.length > 0 ? <p class="learnt">{said.join(' ')}</p> : null;
}

/** How the crop stands by the leaves counted last, first of all, and what was learnt of it; null where nothing was seen. */
function plantsOf({ summary, learnt }: SeasonAhead, speaker: Speaker) {
  return learnt && plantsSentences(learnt.season, summary, learnt.expected, speaker);
}

/** What to grow instead where nothing comes of it, and where to go from here. */
export function Onward({ summary }: { summary: SeasonSummary }) {
  const { say, any } = voice.value;
  return (
    <>
      {summary.outcome === 'no-bulb' && (
        <p class="because">
          {say('app.season.instead', { instead: any(insteads.map((instead) => say(instead))) })}
        </p>
      )}
      {summary.outcome !== 'good' && (
        <p>
          <a href={hrefTo('why', { ...pinned(summary), answers: null, symptoms: [seenOf[summary.outcome]] })}>
            {say('app.why.link.outcome')}
          </a>
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
