import type { ComponentChildren } from 'preact';
import { OpenGarden } from '../controls/OpenGarden.tsx';
import { PlacePicker } from '../controls/PlacePicker.tsx';
import { problemSentence } from '../controls/problem-sentence.ts';
import { placeState } from '../state/place.ts';
import { voice } from '../state/settings.ts';

/** Shows its children once the place is known; before that asks for it, or says why there is no answer. */
export function NeedsPlace({ children }: { children: ComponentChildren }) {
  const { say } = voice.value;
  const found = placeState.value;
  switch (found.state) {
    case 'none':
      return (
        <>
          <h1>{say('app.welcome')}</h1>
          <p>{say('app.welcome.lead')}</p>
          <PlacePicker autoFocus />
          <details>
            <summary>{say('app.garden.open.fold')}</summary>
            <OpenGarden />
          </details>
        </>
      );
    case 'looking':
      return (
        <p role="status" data-waiting>
          {say('app.place.looking')}
        </p>
      );
    case 'refused':
      return (
        <>
          <h1>{say('app.welcome')}</h1>
          <p role="alert" class="alarm">
            {problemSentence(found.problem, voice.value)}
          </p>
          <PlacePicker />
        </>
      );
    case 'failed':
      return (
        <div role="alert">
          <p>{say('app.place.failed', { reason: found.message })}</p>
          <button type="button" onClick={() => location.reload()}>
            {say('app.try-again')}
          </button>
        </div>
      );
    case 'found':
      return <>{children}</>;
  }
}
