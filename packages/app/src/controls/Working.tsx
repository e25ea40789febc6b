import { voice } from '../state/settings.ts';

/** Said while the first answer is worked out. Tests wait for its end by its mark. */
export function Working() {
  return (
    <p role="status" data-waiting>
      {voice.value.say('app.working')}
    </p>
  );
}
