import type { MessageKey } from '@neckfall/words';
import { voice } from '../state/settings.ts';

/** Cautions where they matter: one sentence each, by their messages. */
export function Cautions({ of }: { of: readonly Extract<MessageKey, `app.caution.${string}`>[] }) {
  const { say } = voice.value;
  return (
    <section aria-labelledby="care">
      <h2 id="care">{say('app.cautions')}</h2>
      <ul>
        {of.map((key) => (
          <li key={key}>{say(key)}</li>
        ))}
      </ul>
    </section>
  );
}
