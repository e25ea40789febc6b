import { howWeKnowLines, placeAssumptions, sourceNames } from '@neckfall/answers';
import { frostHollowC } from '@neckfall/engine';
import { place, site } from '../state/place.ts';
import { asked, hrefTo } from '../state/route.ts';
import { voice } from '../state/settings.ts';

/** The foot of every answer: what it rests on. `assumed`: sentences of the page's own. */
export function HowWeKnow({ assumed = [] }: { assumed?: readonly string[] }) {
  const speaker = voice.value;
  const { say, all, quantity } = speaker;
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
    },
    speaker,
  );
  return (
    <section class="how" aria-labelledby="how">
      <h2 id="how">{say('app.how')}</h2>
      <ul>
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
        <li>
          {say('app.how.sources', { sources: all(sourceNames(speaker, 'app.source.model')) })}{' '}
          <a href={hrefTo('about')}>{say('app.how.more')}</a>
        </li>
      </ul>
    </section>
  );
}
