import { planDefaults } from '@neckfall/engine';
import { Fold } from '../../controls/Fold.tsx';
import { hrefTo } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';

/** The height below which climate points take part, m; see the engine's latitude climates. */
type Props = { lowM: number; years: number; seed: number };

/** What the lesson rests on. */
export function Grounds({ lowM, years, seed }: Props) {
  const { say, all, quantity } = voice.value;
  const lines = [
    say('app.latitudes.how.place', { height: quantity('elevation', lowM) }),
    say('app.latitudes.how.sown', { density: quantity('density', planDefaults.densityPerM2) }),
    say('app.latitudes.how.line'),
    `${say('how.years', { years, seed })} ${say('how.past')}`,
  ];
  return (
    <Fold class="how" id="how" title={say('app.how')}>
      <ul>
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
        <li>
          {say('app.how.sources', {
            sources: all([say('source.chelsa'), say('source.cru'), say('app.source.model')]),
          })}{' '}
          <a href={hrefTo('about')}>{say('app.how.more')}</a>
        </li>
      </ul>
    </Fold>
  );
}
