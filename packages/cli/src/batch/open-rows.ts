import { createReadStream, statSync } from 'node:fs';
import { batchBytes, batchLines, longestRecord } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { type RefusalCode, refuse } from '../refusal/refusal.ts';
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
  const refuseFor = (code: RefusalCode, limit: number) =>
    refuse(code, { field: '--batch', exit: 3, values: { value: path, limit } });
  const records = recordsOf(decode(bounded(input, refuseFor)), () => refuseFor('batch-too-many', batchLines));
  const first = await records.next();
  const empty = () => refuse('batch-empty', { field: '--batch', exit: 3, values: { value: path } });
  if (first.done) throw empty();
  if (first.value.fault === 'too-long') throw refuseFor('batch-first-line', longestRecord);
  const columns = readHeader(first.value.cells, command, path, speaker);
  let isEmpty = true;
  for await (const record of records) {
    isEmpty = false;
    yield rowOf(record, columns);
  }
  if (isEmpty) throw empty();
}

/** The pieces of a stream, which may be without an end, up to the most that a batch may hold. */
async function* bounded(
  input: AsyncIterable<Uint8Array>,
  refuseFor: (code: RefusalCode, limit: number) => Error,
): AsyncGenerator<Uint8Array> {
  let bytes = 0;
  for await (const piece of input) {
    bytes += piece.length;
    if (bytes > batchBytes) throw refuseFor('batch-too-big', batchBytes / 1e6);
    yield piece;
  }
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
