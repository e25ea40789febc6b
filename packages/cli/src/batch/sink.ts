import { setImmediate } from 'node:timers/promises';
import { print } from '../output/print.ts';
import { wholeFile } from '../output/write-whole.ts';

/** Where lines go: standard output, or a file that appears only once it is kept. */
export type Sink = {
  /** False once nobody reads any more. */
  write(text: string): Promise<boolean>;
  keep(): void;
  drop(): void;
};

export function openSink(out: string | undefined): Sink {
  return out === undefined ? printed() : filed(out);
}

function printed(): Sink {
  let hasReader = true;
  process.stdout.once('error', () => {
    hasReader = false;
  });
  return {
    async write(text) {
      if (hasReader) await print(text);
      return hasReader && !process.stdout.destroyed;
    },
    keep: () => {},
    drop: () => {},
  };
}

function filed(out: string): Sink {
  const { write, keep, drop } = wholeFile(out);
  return {
    async write(text) {
      write(text);
      // lets a Ctrl-C that came meanwhile end us
      await setImmediate();
      return true;
    },
    keep,
    drop,
  };
}
