import { noCorrections, type WeatherCorrections } from '@neckfall/engine';
import { useRef, useState } from 'preact/hooks';
import { askLong, cancelLong } from '../../ask/ask.ts';
import type { FileRefusal, WeatherFound, WeatherReadAsked } from '../../worker/weather-read.ts';

/** How far the reading of files has come. What was found before stays while it is read anew or that is refused. */
export type Reading = {
  files: readonly File[];
  corrections: WeatherCorrections;
  found: WeatherFound | null;
  /** Name of the file that is being read; null: none is. */
  at: string | null;
  refused: FileRefusal | null;
  failed: string | null;
};

/** Reads files in the worker, again with every correction; leaving off drops them. */
export function useReading(place: WeatherReadAsked['place']) {
  const [reading, set] = useState<Reading | null>(null);
  const turn = useRef(0);

  async function read(files: readonly File[], corrections: WeatherCorrections, before: Reading | null) {
    const own = ++turn.current;
    const now = { files, corrections, found: before?.found ?? null, refused: null, failed: null };
    const tell = (at: string | null, more: Partial<Reading> = {}) => {
      if (turn.current === own) set({ ...now, at, ...more });
    };
    tell(files[0].name);
    const reply = await askLong(
      'weatherRead',
      { files, corrections, place },
      { part: ({ file }) => tell(file) },
    );
    if (reply.state === 'failed') tell(null, { failed: reply.message });
    if (reply.state !== 'done') return;
    if (reply.answer.ok) tell(null, { found: reply.answer.found });
    // what could not be read so is put back as it was
    else tell(null, { refused: reply.answer.refusal, corrections: before?.corrections ?? corrections });
  }

  function leave(): void {
    turn.current++;
    cancelLong('weatherRead');
    set(null);
  }

  return {
    reading,
    start: (files: readonly File[]) => void read(files, noCorrections, null),
    correct: (corrections: WeatherCorrections) => {
      if (reading) void read(reading.files, corrections, reading);
    },
    /** Lets go of what was chosen; while something is read anew, only of that. */
    stop: () => {
      const found = reading?.found ?? null;
      leave();
      if (reading && found) set({ ...reading, at: null });
    },
    leave,
    /** Changes with every file that is given. */
    turn: () => turn.current,
  };
}
