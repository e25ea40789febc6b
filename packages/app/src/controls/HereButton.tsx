import { useState } from 'preact/hooks';
import { voice } from '../state/settings.ts';

type Props = { onPoint: (point: { latitudeDeg: number; longitudeDeg: number }) => void };

const longestWaitMs = 20_000;
/** The browser's code for "the reader said no". */
const denied = 1;

/** Asks the device for its position, once, after the reader pressed it. */
export function HereButton({ onPoint }: Props) {
  const { say } = voice.value;
  const [state, setState] = useState<'idle' | 'waiting' | 'denied' | 'failed'>('idle');
  if (!('geolocation' in navigator)) return null;

  function ask(): void {
    setState('waiting');
    navigator.geolocation.getCurrentPosition(
      ({ coords }) => {
        setState('idle');
        // a kilometre is near enough, and says less about the reader in a link
        const rounded = (degrees: number) => Math.round(degrees * 100) / 100;
        onPoint({ latitudeDeg: rounded(coords.latitude), longitudeDeg: rounded(coords.longitude) });
      },
      ({ code }) => setState(code === denied ? 'denied' : 'failed'),
      { timeout: longestWaitMs, maximumAge: 600_000 },
    );
  }

  return (
    <div>
      <div class="row">
        <button type="button" onClick={ask}>
          {say('app.locate')}
        </button>
      </div>
      <p class="hint" role="status">
        {say(state === 'idle' ? 'app.locate.hint' : `app.locate.${state}`)}
      </p>
    </div>
  );
}
