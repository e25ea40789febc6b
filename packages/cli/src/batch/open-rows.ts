import { createReadStream, statSync } from 'node:fs';
import type { Speaker } from '@neckfall/words';
import { refuse } from '../refusal/refusal.ts';
import { type BatchCommand, columnsOf } from './columns.ts';
import { decode } from './decode.ts';
import { readHeader } from './read-header.ts';
import { type Row, recordsOf, rowOf } from './rows.ts';

/** The rows of `--batch`, read as they are asked for; `-` is standard input. */
export async function* openRows(
  path: string,
  command: BatchCommand,
  speaker: Speaker,
  input: AsyncIterable<Uint8Array> = bytesOf(path, command, speaker),
): AsyncGenerator<Row> {
  const records = recordsOf(decode(input));
  const first = await records.next();
  const empty = () => refuse('batch-empty', { field: '--batch', exit: 3, values: { value: path } });
  if (first.done) throw empty();
  const columns = readHeader(first.value.cells, command, path, speaker);
  let isEmpty = true;
  for await (const record of records) {
    isEmpty = false;
    yield rowOf(record, columns);
  }
  if (isEmpty) throw empty();
}

async function* bytesOf(path: string, command: BatchCommand, { all }: Speaker): AsyncGenerator<Uint8Array> {
  const details = { field: '--batch', exit: 3, expected: all(columnsOf[command]) } as const;
  try {
    if (path !== '-' && statSync(path).isDirectory()) {
      throw refuse('batch-folder', { ...details, values: { value: path } });
    }
    yield* path === '-' ? process.stdin : createReadStream(path);
  } catch (cause) {
    const { code } = cause as NodeJS.ErrnoException;
    if (code === undefined) throw cause;
    throw refuse(code === 'ENOENT' ? 'batch-missing' : 'batch-unreadable', {
      ...details,
      values: { value: path, reason: code },
      cause,
    });
  }
}
