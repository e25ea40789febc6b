import { voice } from '../state/settings.ts';

/** Our own fault, said plainly. */
export function Fault({ reason }: { reason: string }) {
  return (
    <p role="alert" class="alarm">
      {voice.value.say('app.fault', { reason })}
    </p>
  );
}
