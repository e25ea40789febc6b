import { readSync } from 'node:fs';

/** A line of an open file; `isEnded`: it has its line feed, which `length` counts. Offset and length in bytes. */
export type FileLine = { text: string; offset: number; length: number; isEnded: boolean };

const chunkBytes = 1 << 16;

/** The lines of an open file from its beginning, without ever holding more than one of them. */
export function* linesOf(file: number): Generator<FileLine> {
  const chunk = Buffer.alloc(chunkBytes);
  let held = Buffer.alloc(0);
  let offset = 0;
  for (let at = 0; ; ) {
    const read = readSync(file, chunk, 0, chunkBytes, at);
    if (read === 0) break;
    at += read;
    held = Buffer.concat([held, chunk.subarray(0, read)]);
    for (let end = held.indexOf(10); end >= 0; end = held.indexOf(10)) {
      yield { text: held.toString('utf8', 0, end), offset, length: end + 1, isEnded: true };
      offset += end + 1;
      held = held.subarray(end + 1);
    }
  }
  if (held.length > 0) yield { text: held.toString(), offset, length: held.length, isEnded: false };
}
