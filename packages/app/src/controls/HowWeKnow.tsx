import { howWeKnowLines, placeAssumptions, sourceNames } from '@neckfall/answers';
import { frostHollowC, type Plan } from '@neckfall/engine';
import { ask } from '../ask/ask.ts';
import { useAnswer } from '../ask/use-answer.ts';
import { place, site, siteKey } from '../state/place.ts';
import { asked, hrefTo } from '../state/route.ts';
import { voice } from '../state/settings.ts';
import { Fold } from './Fold.tsx';

type Props = {
  /** Sentences of the page's own. */
  assumed?: readonly string[];
  /** The crop in question, for what it hangs on most; none where there are many. */
  plan?: Plan | null;
  /** How far the dates and sizes of this answer lie apart, in a sentence. */
  span?: string | null;
};

/** The foot of every answer: what it rests on, what is least sure. */
export function HowWeKnow({ assumed = [], plan = null, span = null }: Props) {
  const speaker = voice.value;
  const { say, all, quantity } = speaker;
  const key = plan && JSON.stringify([siteKey.value, plan]);
  const moved = useAnswer(key, () => ask('whatMovesIt', { site: site.value!, plan: plan! }));
  if (!place.value || !site.value) return null;
  const { warmerC, frostHollow, years, seed } = site.value;
  const settings = { warmerC, warmerFrom: 'default', sunHours: asked.value.sun } as const;
  const hollow = say('app.how.hollow', { colder: quantity('temperatureDifference', frostHollowC) });
  const lines = howWeKnowLines(
    {
      place: place.value,
      years,
      seed,
      assumed: [
        ...placeAssumptions(place.value, settings, speaker),
        ...(frostHollow ? [hollow] : []),
        ...assumed,
      ],
      span,
      pulls: moved.isFresh ? moved.answer : null,
    },
    speaker,
  );
  return (
    <Fold class="how" id="how" title={say('app.how')}>
      <ul>
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
        <li>
          {say('app.how.sources', { sources: all(sourceNames(speaker, 'app.source.model')) })}{' '}
          <a href={hrefTo('about')}>{say('app.how.more')}</a>
        </li>
      </ul>
    </Fold>
  );
}
