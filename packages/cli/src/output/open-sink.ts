import { closeSync, fstatSync, openSync, type Stats, statSync } from 'node:fs';
import { Socket } from 'node:net';
import { setImmediate } from 'node:timers/promises';
import { openPipe } from './open-pipe.ts';
import { refusing } from './out-refusal.ts';
import { print } from './print.ts';
import { wholeFile, writeAll } from './whole-file.ts';

/** Where text or bytes go: a stream, a device, or a file that appears only once it is kept. */
export type Sink = {
  /** False once nobody reads any more. */
  write(content: string | Uint8Array): Promise<boolean>;
  keep(): void;
  drop(): void;
};

/** @param out the file of `--out`; without it, standard output */
export async function openSink(out: string | undefined): Promise<Sink> {
  if (out === undefined) return printed(process.stdout);
  const found = refusing(out, () => statSync(out, { throwIfNoEntry: false }));
  // what stands there and is no file cannot be replaced: it is written to as it is
  if (found && isStdout(found)) return printed(process.stdout);
  if (found?.isFIFO()) return printed(new Socket({ fd: await openPipe(out), readable: false }));
  if (found && !found.isFile() && !found.isDirectory()) return device(out);
  return filed(out);
}

/** `/dev/stdout` may be a pipe or socket that cannot be opened again, or a file that others add to. */
function isStdout(found: Stats): boolean {
  try {
    const { dev, ino } = fstatSync(1);
    return found.dev === dev && found.ino === ino && !found.isCharacterDevice();
  } catch {
    return false;
  }
}

type Printed = NodeJS.WritableStream & { destroyed: boolean };

/** Streams that are listened to, and those of them that nobody reads any more. */
const heeded = new WeakSet<Printed>();
const unread = new WeakSet<Printed>();

function printed(stream: Printed): Sink {
  // once for each, however many answers go to it
  if (!heeded.has(stream)) stream.on('error', () => unread.add(stream));
  heeded.add(stream);
  return {
    async write(content) {
      if (!unread.has(stream)) await print(content, stream);
      return !unread.has(stream) && !stream.destroyed;
    },
    keep: () => {},
    drop: () => {},
  };
}

function device(out: string): Sink {
  const file = refusing(out, () => openSync(out, 'w'));
  return {
    async write(content) {
      refusing(out, () => writeAll(file, content));
      return true;
    },
    keep: () => closeSync(file),
    drop: () => {},
  };
}

function filed(out: string): Sink {
  const { write, keep, drop } = wholeFile(out);
  return {
    async write(content) {
      write(content);
      // lets a Ctrl-C that came meanwhile end us
      await setImmediate();
      return true;
    },
    keep,
    drop,
  };
}
