import { parentPort, workerData } from 'node:worker_threads';
import { loadLater } from '@neckfall/words';
import { refusalOf } from '../refusal/refusal.ts';
import { answerRows } from './answer-rows.ts';
import type { Report } from './crew.ts';
import { type BatchJob, lineMaker } from './line-maker.ts';
import { memoryReleaser } from './release-memory.ts';
import type { Row } from './rows.ts';

/** A thread of a batch: answers portions of rows in the order in which they come. */
export function serveBatch(): void {
  const { batch } = workerData as { batch: BatchJob };
  const lineOf = lineMaker(batch);
  const release = memoryReleaser();
  // a thread has words of its own to fetch; portions wait for them in turn
  const words = batch.command === 'answer' ? loadLater() : Promise.resolve();
  parentPort?.on('message', (rows: Row[]) => {
    words.then(() => parentPort?.postMessage(reportOn(rows)));
  });

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
