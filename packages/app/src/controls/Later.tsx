import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { voice } from '../state/settings.ts';
import { nextTurn } from '../turns/next-turn.ts';
import { Working } from './Working.tsx';

type Props<Own> = { load: () => Promise<ComponentType<Own>>; own: Own };

/** Shows a part of the app that is fetched when first needed. */
export function Later<Own extends object>({ load, own }: Props<Own>) {
  const { say } = voice.value;
  const [Part, setPart] = useState<ComponentType<Own> | null>(null);
  const [failed, setFailed] = useState<string | null>(null);
  const [tries, setTries] = useState(0);
  // loaded once, and again when asked to
  useEffect(() => {
    let isGone = false;
    load().then(
      // its code was just read: what it shows is a task of its own
      (found) => nextTurn(() => isGone || setPart(() => found)),
      (error: Error) => isGone || setFailed(error.message),
    );
    return () => {
      isGone = true;
    };
  }, [tries]);
  if (Part) return <Part {...own} />;
  if (failed === null) return <Working />;
  return (
    <div role="alert">
      <p>{say('app.place.failed', { reason: failed })}</p>
      <button
        type="button"
        onClick={() => {
          setFailed(null);
          setTries(tries + 1);
        }}
      >
        {say('app.try-again')}
      </button>
    </div>
  );
}
