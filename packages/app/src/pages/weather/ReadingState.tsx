import { voice } from '../../state/settings.ts';
import { refusalSentence } from './refusal-words.ts';
import type { Reading } from './use-reading.ts';

/** Which file is being read, and a way to stop; or why it was not taken. */
export function ReadingState({ reading, onStop }: { reading: Reading | null; onStop: () => void }) {
  const speaker = voice.value;
  const { say } = speaker;
  return (
    <>
      <p role="status" class="reading" data-waiting={reading?.at != null ? true : undefined}>
        {reading?.at != null && (
          <>
            {say('app.weather.reading', { file: reading.at, files: reading.files.length })}{' '}
            <button type="button" class="plain" onClick={onStop}>
              {say('app.weather.reading.stop')}
            </button>
          </>
        )}
      </p>
      {reading?.refused && (
        <p role="alert" class="alarm">
          {refusalSentence(reading.refused, speaker)}
        </p>
      )}
      {reading?.failed != null && (
        <p role="alert" class="alarm">
          {say('app.weather.fault', { reason: reading.failed })}
        </p>
      )}
    </>
  );
}
