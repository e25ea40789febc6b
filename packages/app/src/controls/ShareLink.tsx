import { useState } from 'preact/hooks';
import { address, hrefTo } from '../state/route.ts';
import { voice } from '../state/settings.ts';

/** Copies the link of what is on the page, without the day it was looked at and the planting it is kept as here. */
export function ShareLink() {
  const { say } = voice.value;
  const [state, setState] = useState<'idle' | 'done' | 'by-hand'>('idle');
  const { page, asked } = address.value;
  // what is kept here is kept nowhere else
  if (!asked.at || page === 'kept') return null;
  const link = new URL(hrefTo(page, { today: null, planting: null }), location.href).href;
  const copy = () =>
    (navigator.clipboard ? navigator.clipboard.writeText(link) : Promise.reject()).then(
      () => setState('done'),
      () => setState('by-hand'),
    );
  return (
    <div>
      <button type="button" onClick={copy}>
        {say('app.share')}
      </button>
      <p class="hint" role="status">
        {state === 'done' && say('app.share.done')}
        {state === 'by-hand' && (
          <label>
            {say('app.share.by-hand')}
            <input readonly value={link} onFocus={(event) => event.currentTarget.select()} />
          </label>
        )}
      </p>
    </div>
  );
}
