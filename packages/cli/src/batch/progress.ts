import type { Say } from '@neckfall/words';

export type Progress = { add(rows: number): void; end(): void };

const everyMs = 250;

/** How far a batch is, on one line of stderr that is written over; nothing where no one watches. */
export function progress(say: Say, stream = process.stderr): Progress {
  if (!stream.isTTY) return { add: () => {}, end: () => {} };
  const from = performance.now();
  let shown = from;
  let answered = 0;
  return {
    add(rows) {
      answered += rows;
      const now = performance.now();
      if (now - shown < everyMs) return;
      shown = now;
      const rate = Math.round((1000 * answered) / (now - from));
      stream.write(`\r${say('batch.progress', { rows: answered, rate })}\u001b[K`);
    },
    end: () => void stream.write('\r\u001b[K'),
  };
}
