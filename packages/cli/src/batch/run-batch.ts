import type { Speaker } from '@neckfall/words';
import type { Sink } from '../output/open-sink.ts';
import { refuse } from '../refusal/refusal.ts';
import type { Answered } from './answer-rows.ts';
import type { BatchCommand } from './columns.ts';
import type { Crew } from './crew.ts';
import { progress } from './progress.ts';
import type { Row } from './rows.ts';

/** Rows handed to a thread at a time: enough to spare messages, few enough to share short files out. */
const portion: Record<BatchCommand, number> = { season: 6, where: 1, handout: 1, answer: 1 };
/** Portions under way for each hand: one answered, one waiting, two to fill the gaps of rows that take longer. */
const portionsAhead = 4;

/**
 * Answers rows and writes their lines in the order of the file. No more rows are read than the crew has in hand and
 * the reader of the lines has taken. Throws a refusal where no row could be answered.
 * @returns a warning about rows that failed, or null
 */
export async function runBatch(
  rows: AsyncIterable<Row>,
  command: BatchCommand,
  path: string,
  crew: Crew,
  sink: Sink,
  speaker: Speaker,
): Promise<string | null> {
  const { say } = speaker;
  const watch = progress(say);
  const underWay: Promise<Answered>[] = [];
  const seen = { rows: 0, failed: 0, first: '' };
  const settleOldest = async () => {
    const { text, rows: count, failed, firstFailure } = await (underWay.shift() as Promise<Answered>);
    if (seen.failed === 0 && firstFailure) seen.first = firstFailure.message;
    seen.rows += count;
    seen.failed += failed;
    watch.add(count);
    return sink.write(text);
  };
  try {
    for await (const some of inPortions(rows, portion[command])) {
      const answered = crew.answer(some);
      // met where it is awaited, which may be later than its failure
      answered.catch(() => {});
      underWay.push(answered);
      if (underWay.length >= crew.hands * portionsAhead && !(await settleOldest())) return null;
    }
    while (underWay.length > 0) if (!(await settleOldest())) return null;
    const { first, ...counts } = seen;
    if (counts.failed === counts.rows) {
      throw refuse('batch-none-answered', {
        field: '--batch',
        exit: 3,
        values: { value: path, rows: counts.rows, first },
      });
    }
    sink.keep();
    return counts.failed === 0 ? null : say('batch.some-failed', seen);
  } finally {
    watch.end();
    // without effect on what has been kept
    sink.drop();
    await crew.dismiss();
  }
}

async function* inPortions(rows: AsyncIterable<Row>, size: number): AsyncGenerator<Row[]> {
  let some: Row[] = [];
  for await (const row of rows) {
    some.push(row);
    if (some.length < size) continue;
    yield some;
    some = [];
  }
  if (some.length > 0) yield some;
}
