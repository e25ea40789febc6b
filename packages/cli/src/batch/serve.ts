import { parentPort, workerData } from 'node:worker_threads';
import { refusalOf } from '../refusal/refusal.ts';
import { answerRows } from './answer-rows.ts';
import type { Report } from './crew.ts';
import { type BatchJob, lineMaker, loadWordsFor } from './line-maker.ts';
import { memoryReleaser } from './release-memory.ts';
import type { Row } from './rows.ts';

/** A thread of a batch: answers portions of rows in the order in which they come. */
export async function serveBatch(): Promise<void> {
  const { batch } = workerData as { batch: BatchJob };
  await loadWordsFor(batch);
  const lineOf = lineMaker(batch);
  const release = memoryReleaser();
  parentPort?.on('message', (rows: Row[]) => parentPort?.postMessage(reportOn(rows)));

  function reportOn(rows: readonly Row[]): Report {
    try {
      return { answered: answerRows(rows, lineOf) };
    } catch (error) {
      const refusal = refusalOf(error);
      return refusal ? { refusal } : { fault: String(error) };
    } finally {
      release();
    }
  }
}
