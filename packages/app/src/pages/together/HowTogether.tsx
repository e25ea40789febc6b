import { sourceNames } from '@neckfall/answers';
import { Fold } from '../../controls/Fold.tsx';
import { hrefTo } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import type { LineFound } from './drawn-lines.ts';

/** What all lines rest on. */
export function HowTogether({ found }: { found: readonly { found: LineFound }[] }) {
  const speaker = voice.value;
  const { say, all, quantity } = speaker;
  if (found.length === 0) return null;
  const { years, warmerC } = found[0].found.site;
  return (
    <Fold class="how" id="how" title={say('app.how')}>
      <ul>
        <li>{say('app.together.how', { years, warmer: quantity('temperatureDifference', warmerC) })}</li>
        <li>{say('app.together.how.ground')}</li>
        <li>{say('app.together.how.years')}</li>
        <li>
          {say('app.how.sources', { sources: all(sourceNames(speaker, 'app.source.model')) })}{' '}
          <a href={hrefTo('about')}>{say('app.how.more')}</a>
        </li>
      </ul>
    </Fold>
  );
}
