import { latitudeSentences } from '@neckfall/answers';
import { useEffect, useRef, useState } from 'preact/hooks';
import { voice } from '../../state/settings.ts';
import type { LatitudeReply } from '../../worker/latitude-season.ts';

/** Read out only once a slider has rested so long: nobody can listen to every step. */
const restMs = 700;

/** The three sentences of a stop; those who listen hear them when a slider rests. */
export function Said({ reply, isFresh }: { reply: LatitudeReply; isFresh: boolean }) {
  const sentences = latitudeSentences(reply, voice.value);
  const text = sentences.join(' ');
  const [spoken, speak] = useState('');
  const first = useRef(text);
  useEffect(() => {
    // what stood there on arrival is read with the page
    if (!isFresh || text === first.current) return;
    first.current = '';
    const rest = setTimeout(() => speak(text), restMs);
    return () => clearTimeout(rest);
  }, [text, isFresh]);
  return (
    <>
      <ol class="three">
        {sentences.map((sentence, at) => (
          <li key={at}>{sentence}</li>
        ))}
      </ol>
      <p class="unseen" aria-live="polite">
        {spoken}
      </p>
    </>
  );
}
