import { useEffect, useRef, useState } from 'preact/hooks';
import { PlacePicker } from '../controls/PlacePicker.tsx';
import { placeInFull, placeState } from '../state/place.ts';
import { asked } from '../state/route.ts';
import { voice } from '../state/settings.ts';

/** The place that all pages speak of, always in sight, and the way to another. */
export function PlaceBar() {
  const { say } = voice.value;
  const [isChanging, setChanging] = useState(false);
  const button = useRef<HTMLButtonElement>(null);
  const { at, name } = asked.value;
  const key = at && `${at.latitudeDeg} ${at.longitudeDeg} ${name}`;
  // another place, by whatever way, closes the search
  useEffect(() => setChanging(false), [key]);
  if (placeState.value.state === 'none') return null;
  return (
    <section class="place" aria-label={say('app.place')}>
      <p>
        <strong>
          {placeState.value.state === 'looking' ? (name ?? say('app.place.looking')) : placeInFull.value}
        </strong>
        <button
          type="button"
          class="plain"
          ref={button}
          aria-expanded={isChanging}
          onClick={() => setChanging(!isChanging)}
        >
          {say(isChanging ? 'app.place.keep' : 'app.place.change')}
        </button>
      </p>
      {isChanging && <PlacePicker autoFocus onDone={() => setChanging(false)} />}
    </section>
  );
}
