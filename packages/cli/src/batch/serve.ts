import { workerData } from 'node:worker_threads';
import { memoryReleaser } from '../threads/release-memory.ts';
import { serveThread } from '../threads/serve-thread.ts';
import { answerRows } from './answer-rows.ts';
import { type BatchJob, lineMaker, loadWordsFor } from './line-maker.ts';
import type { Row } from './rows.ts';

/** A thread of a batch: answers portions of rows. */
export async function serveBatch(): Promise<void> {
  const { batch } = workerData as { batch: BatchJob };
  await loadWordsFor(batch);
  const lineOf = lineMaker(batch);
  serveThread((rows: readonly Row[]) => answerRows(rows, lineOf), memoryReleaser());
}
