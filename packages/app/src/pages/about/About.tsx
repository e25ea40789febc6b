import { coverageKm, engineVersion } from '@neckfall/engine';
import { forgetPlace } from '../../state/route.ts';
import { forgetSettings, voice } from '../../state/settings.ts';

const sources = [
  'about.chelsa',
  'about.cru',
  'about.geonames',
  'about.land',
  'about.sun',
  'about.water',
  'about.plant',
] as const;

/** What it rests on, what it does not know, and what leaves the device: nothing. */
export function About() {
  const { say, quantity } = voice.value;
  return (
    <>
      <h1>{say('app.tagline')}</h1>
      <p>{say('app.about.what.text')}</p>
      <h2>{say('app.about.privacy')}</h2>
      <p>{say('app.about.privacy.text')}</p>
      <p>
        <button type="button" onClick={forget}>
          {say('app.about.forget')}
        </button>
      </p>
      <h2>{say('app.about.limits')}</h2>
      <p>{say('app.about.limits.text', { distance: quantity('distance', coverageKm) })}</p>
      <p>{say('app.about.defer')}</p>
      <h2>{say('app.about.sources')}</h2>
      <ul>
        {sources.map((key) => (
          <li key={key}>{say(key)}</li>
        ))}
      </ul>
      <p>
        <a href="./NOTICE.txt">{say('app.about.libraries')}</a>
      </p>
      <p>{say('app.about.version', { version: engineVersion })}</p>
    </>
  );
}

function forget(): void {
  forgetSettings();
  forgetPlace();
}
