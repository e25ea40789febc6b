import { sourceNames } from '@neckfall/answers';
import { coverageKm, type DayNumber, landWarmingSinceNormalsC } from '@neckfall/engine';
import { Fold } from '../../controls/Fold.tsx';
import { hrefTo } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import { mapYears } from './atlas-held.ts';

/** What a map rests on, and how it is less than the answer for a place. */
export function HowMapsAreMade({ finest, from }: { finest: number; from: DayNumber }) {
  const speaker = voice.value;
  const { say, all, number, quantity, dayWithYear } = speaker;
  const lines = [
    say('app.atlas.how.points', { step: number(finest, 1) }),
    say('app.atlas.how.years', { years: mapYears, from: dayWithYear(from) }),
    say('app.atlas.how.less'),
    say('app.atlas.how.ground', {
      distance: quantity('distance', coverageKm),
      warmer: quantity('temperatureDifference', landWarmingSinceNormalsC),
    }),
    say('app.atlas.how.drawn'),
  ];
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
